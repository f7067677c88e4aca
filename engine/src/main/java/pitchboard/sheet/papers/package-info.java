/**
 * The sheets of a stair, one class each, and {@link pitchboard.sheet.papers.Draughtsman} who puts the set together.
 * In: a {@link pitchboard.sheet.papers.Subject}, everything that was settled about the stair. Out: finished sheets.
 * Computes no sizes: what a sheet says comes from the stair, its parts, its findings or its worksheet.
 */
package pitchboard.sheet.papers;
