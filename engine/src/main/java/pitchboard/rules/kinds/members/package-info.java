/**
 * Kinds of rules about the wood that carries the steps, where a book prescribes its sizes instead of a reckoning.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.members;
