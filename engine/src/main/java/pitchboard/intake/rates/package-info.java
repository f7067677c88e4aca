/**
 * The lines of a file of rates, both ways.
 * In: text in its shape. Out: {@code Rates}, or everything that is wrong with the text.
 */
package pitchboard.intake.rates;
