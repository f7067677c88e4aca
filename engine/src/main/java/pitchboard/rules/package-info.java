/**
 * What a rule, a rulebook, a verdict and a finding are, and the one place that judges a stair by them.
 * In: a {@link pitchboard.stair.Stair} and a {@link pitchboard.rules.Rulebook}. Out: {@link pitchboard.rules.Finding}s.
 * Kinds of rules live in {@code rules.kinds}, editions of documents in {@code rules.books} above them.
 */
package pitchboard.rules;
