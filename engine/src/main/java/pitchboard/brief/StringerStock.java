package pitchboard.brief;

import pitchboard.measure.Length;

/**
 * The boards the stringers are cut from.
 *
 * @param name as the yard calls them, such as {@code 2x12}
 * @param depth as it measures
 * @param thickness as it measures
 */
public record StringerStock(String name, Length depth, Length thickness) {}
