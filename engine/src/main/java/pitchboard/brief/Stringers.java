package pitchboard.brief;

import pitchboard.measure.Length;

/**
 * The stringers of the flight.
 *
 * @param count 2 or more, spread evenly
 * @param treadOverhang how far the treads reach past the outer faces of the outer stringers, each side
 * @param trim board length wasted at each end to square it and lose splits
 */
public record Stringers(StringerStock stock, int count, Length treadOverhang, Length trim) {}
