package pitchboard.sheet;

/** The weights of the one family of letters that all sheets are set in. */
public enum Face {
    REGULAR,
    BOLD
}
