package pitchboard.parts;

import pitchboard.measure.Marked;

/**
 * A pencil mark on a stringer's edge, measured from the one datum.
 *
 * @param step which step's corner it is; one past the last tread for the header's face
 * @param at exact position and tape line
 */
public record RunningMark(int step, Marked at) {}
