/**
 * Kinds of rules about the level places and doors at both ends of the flight.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document; limits and clauses are handed in.
 */
package pitchboard.rules.kinds.landings;
