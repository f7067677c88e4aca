/** Stands in no table. */
package planted.stranger;
