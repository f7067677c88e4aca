/**
 * Points and outlines in an upright plane, exact.
 * In: lengths. Out: the same, joined up. y is up, x runs toward the upper floor (see docs/conventions.md).
 * Knows nothing about stairs or paper.
 */
package pitchboard.plane;
