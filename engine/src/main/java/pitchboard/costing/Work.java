package pitchboard.costing;

import pitchboard.measure.Ratio;

/**
 * How much of a task there is.
 *
 * @param times how often, or how many feet
 */
public record Work(Task task, Ratio times) {}
