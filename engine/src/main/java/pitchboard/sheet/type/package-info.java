/**
 * Setting text: how wide letters are, how fractions stand, where lines break.
 * In: strings, with U+2044 between the two parts of a fraction and {@code **} around bold words.
 * Out: runs of letters at settled places. A character that the type does not have is refused, never drawn as a box.
 * Knows one family of type, Archivo Narrow, as tables of widths; knows no font files.
 */
package pitchboard.sheet.type;
