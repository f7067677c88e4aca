/**
 * Settled drawings: marks at their final place on paper, each knowing the part that put it there.
 * In: what the draughtsman decided. Out: a display list that a writer copies out without computing anything.
 * Millimetres on paper, origin at the top left corner, y down; turns in degrees, anticlockwise as seen by the reader.
 * Knows nothing about stairs, scales or file formats.
 */
package pitchboard.sheet;
