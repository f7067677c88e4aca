/**
 * What pieces a stair needs, as one buys wood for them.
 * In: stairs with their parts. Out: lengths by section, and how closely two stringers lie in one board.
 * Knows no price.
 */
package pitchboard.buying.need;
