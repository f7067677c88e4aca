/**
 * The lines of a price list with the crew's rack, both ways.
 * In: text in its shape. Out: a {@code Yard}, or everything that is wrong with the text.
 */
package pitchboard.intake.yard;
