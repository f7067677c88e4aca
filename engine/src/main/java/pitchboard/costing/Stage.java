package pitchboard.costing;

import pitchboard.measure.Ratio;

/**
 * A payment on the way.
 *
 * @param when such as {@code when the timber is on site}
 * @param share of the price
 */
public record Stage(String when, Ratio share) {}
