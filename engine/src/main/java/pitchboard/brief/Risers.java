package pitchboard.brief;

import pitchboard.measure.Length;

/** Whether the steps are closed. */
public sealed interface Risers {
    /** Nothing between the treads. */
    record Open() implements Risers {}

    /** A board in front of every riser cut. */
    record Boards(Length thickness) implements Risers {}

    /** Thickness that stands in front of the riser cut: zero when open. */
    default Length inFront() {
        return this instanceof Boards boards ? boards.thickness() : Length.ZERO;
    }
}
