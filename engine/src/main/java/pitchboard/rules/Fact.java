package pitchboard.rules;

/** A part of site or brief that may be open, so that a rule cannot be judged by it. */
public enum Fact {
    RISE,
    LEVEL_LINE,
    RUN_AVAILABLE,
    /** Whether anything is overhead, and what. */
    OVERHEAD,
    /** How high one of the things overhead is. */
    UNDERSIDE,
    DECKING_OVERHANG,
    TOP_LANDING_DEPTH,
    TOP_LANDING_WIDTH,
    TOP_LANDING_FALL,
    TOP_DOOR,
    CLEAR_OF_TOP_DOOR,
    BOTTOM_LANDING_DEPTH,
    BOTTOM_LANDING_WIDTH,
    BOTTOM_LANDING_FALL,
    BOTTOM_DOOR,
    CLEAR_OF_BOTTOM_DOOR,
    LIGHT,
    FALL_BESIDE,
    NOSING,
    RAIL_HEIGHT,
    RAIL_GRIP,
    RAIL_REACH,
    RAIL_TO_WALL,
    RAIL_FULL_LENGTH,
    GUARD_HEIGHT,
    GUARD_OPENING,
    GUARD_TRIANGLE
}
