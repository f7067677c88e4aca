package pitchboard.brief;

/** How the flight meets the upper floor. */
public enum HeadJoin {
    /** The top tread is level with the floor: as many treads as risers. */
    FLUSH,
    /** The floor itself is the last step: one tread fewer than risers. */
    ONE_DOWN
}
