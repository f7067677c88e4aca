/**
 * Kinds of rules about how alike the steps of a flight are: books measure it in different ways, and each way is its own kind.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.evenness;
