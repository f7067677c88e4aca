/** Breaks the purity of an engine package, once in every method. */
package planted.measure;
