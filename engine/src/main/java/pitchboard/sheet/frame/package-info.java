/**
 * What every sheet carries: a border, and a block of words along the bottom that says which job, which sheet, at what
 * scale, under which rules and from which inputs.
 * In: drafts. Out: finished sheets, numbered.
 */
package pitchboard.sheet.frame;
