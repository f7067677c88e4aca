package pitchboard.brief;

import pitchboard.measure.Length;

/** What closes a guard between its posts and rails. */
public sealed interface Infill {
    /**
     * Plumb sticks between bottom and top rail.
     *
     * @param ball that must not pass between them
     */
    record Balusters(Section section, Length ball) implements Infill {}

    /**
     * Boards that run with the rails, one above the other.
     *
     * @param ball that must not pass between them
     */
    record Boards(Section section, Length ball) implements Infill {}

    /** A solid sheet in every bay. */
    record Panels(Length thickness) implements Infill {}
}
