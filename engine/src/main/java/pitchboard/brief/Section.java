package pitchboard.brief;

import pitchboard.measure.Length;

/**
 * The section of a piece of a guard, as it measures.
 *
 * @param thickness of a post, baluster, board or panel: across the flight; of a rail: square to the slope
 * @param width of a post, baluster or board: as it is seen from the side; of a rail: across the flight
 */
public record Section(Length thickness, Length width) {}
