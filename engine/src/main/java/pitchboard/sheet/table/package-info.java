/**
 * Tables on paper: a head, rules between the rows, cells that wrap, and rows that go on over the next page.
 * In: columns and rows of text. Out: marks on a draft, and how far it came.
 * Knows nothing about what the rows say.
 */
package pitchboard.sheet.table;
