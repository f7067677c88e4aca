/**
 * Kinds of rules about the front edges of treads and floors, and what is between one tread and the next.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.nosings;
