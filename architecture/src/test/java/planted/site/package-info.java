/** Breaks nothing. */
package planted.site;
