/**
 * The sheets of a stair, one class each, and {@link pitchboard.sheet.papers.Draughtsman} who puts the set together with
 * those of guards and of the work. In: a {@link pitchboard.sheet.subject.Subject}. Out: finished sheets.
 * Computes no sizes: what a sheet says comes from the stair, its parts, its findings or its worksheet.
 */
package pitchboard.sheet.papers;
