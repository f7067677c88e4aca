/**
 * Editions of documents as rulebooks: one class per edition, with its limits, its clauses and how each was come by.
 * In: nothing. Out: {@link pitchboard.rules.Rulebook}s, found by name. The documents are paraphrased, never quoted.
 * An edition is never edited to follow the next one; that is a class of its own.
 */
package pitchboard.rules.books;
