/**
 * The linear relaxation of a cutting problem: how often to cut each way of filling a board, in fractions.
 * In: a {@code Model}, pieces still wanted and bounds on the boards. Out: fractions to go by, and {@code Prices} in whole
 * numbers that bound the cost of every plan, whatever the doubles did.
 * Knows nothing about plans of whole boards.
 */
package pitchboard.buying.relaxing;
