/**
 * Kinds of rules about light, wood, ground and loads: mostly what somebody has to look at.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.surroundings;
