/** Makes a circle with the package it uses. */
package planted.parts;
