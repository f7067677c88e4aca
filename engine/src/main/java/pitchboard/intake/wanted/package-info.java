/**
 * The lines under {@code wanted:}, both ways: what crew and client want, and what stock is at hand.
 * In: written lines. Out: the parts of a {@link pitchboard.brief.Brief}, and the same lines again.
 */
package pitchboard.intake.wanted;
