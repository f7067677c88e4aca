/**
 * Guards and handrails laid out: posts, bays, rails, infill, and how far one could fall.
 * In: a {@link pitchboard.stair.Stair} whose brief says what the guard is built of. Out: exact places, lengths and
 * running marks in the site frame; the two sides of a flight are alike.
 * Judges nothing; knows no limits of any document, and no paper.
 */
package pitchboard.railing;
