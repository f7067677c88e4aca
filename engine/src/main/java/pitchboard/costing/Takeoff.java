package pitchboard.costing;

import pitchboard.measure.Ratio;

/**
 * How much of a sundry is needed.
 *
 * @param amount in the sundry's unit, without waste; more than zero
 * @param rule how it was counted, in words, with where the rule comes from
 */
public record Takeoff(Sundry kind, Ratio amount, String rule) {}
