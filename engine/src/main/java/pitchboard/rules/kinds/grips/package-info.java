/**
 * Kinds of rules about the section of a handrail: what a hand can close on.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.grips;
