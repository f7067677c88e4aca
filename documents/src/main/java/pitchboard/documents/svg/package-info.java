/**
 * Sheets as SVG at true scale: millimetres on paper are millimetres in the file.
 * In: a settled sheet. Out: one string. Touches no files except in {@code SvgFonts}, so that the browser can use it too.
 */
package pitchboard.documents.svg;
