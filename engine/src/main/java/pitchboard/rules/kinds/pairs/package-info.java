/**
 * Kinds of rules about rise and run judged together: a pair can be wrong though each of the two is lawful.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.pairs;
