/** Uses a package that its row does not name. */
package planted.plane;
