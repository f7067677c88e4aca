/**
 * Looks finished sheets over as a careful eye would: texts on each other, texts off the page, lines through texts.
 * In: a sheet. Out: complaints in words; none when it is in order.
 */
package pitchboard.sheet.inspection;
