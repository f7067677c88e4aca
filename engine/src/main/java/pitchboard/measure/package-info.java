/**
 * Lengths, angles, and the text a tape measure speaks.
 *
 * <p>In: text and whole numbers. Out: exact values, and marks rounded once. Knows nothing of stairs.
 */
package pitchboard.measure;
