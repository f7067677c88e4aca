/**
 * Rulebooks of Australia and New Zealand: one class per edition, with its limits, its clauses and how each was come by.
 * In: kinds of rules. Out: {@link pitchboard.rules.Rulebook}s. The documents are paraphrased, never quoted.
 * An edition is never edited to follow the next one; that is a class of its own.
 */
package pitchboard.rules.books.pacific;
