package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * A post under every stringer, between foot and head.
 *
 * @param at level, from the first riser cut to the middle of the posts
 * @param width of a post along the run
 * @param thickness of a post across the flight
 * @param footing side of the square footing under each post; empty when nobody said
 */
public record Support(Length at, Length width, Length thickness, Optional<Length> footing) {}
