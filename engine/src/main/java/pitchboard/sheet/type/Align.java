package pitchboard.sheet.type;

/** Which point of a line of text stands at the given place. */
public enum Align {
    LEFT(0),
    CENTRE(0.5),
    RIGHT(1);

    private final double share;

    Align(double share) {
        this.share = share;
    }

    /** The part of the line that lies before the place. */
    public double share() {
        return share;
    }
}
