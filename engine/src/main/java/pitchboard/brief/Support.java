package pitchboard.brief;

import pitchboard.measure.Length;

/**
 * A post under every stringer, between foot and head.
 *
 * @param at level, from the first riser cut to the middle of the posts
 * @param width of a post along the run
 * @param thickness of a post across the flight
 */
public record Support(Length at, Length width, Length thickness) {}
