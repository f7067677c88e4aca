package pitchboard.site;

/** What is beside the flight. */
public enum Side {
    OPEN,
    WALL
}
