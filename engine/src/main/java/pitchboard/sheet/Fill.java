package pitchboard.sheet;

/** What an area is covered with. Light enough that lines and text on it stay legible on a laser print. */
public enum Fill {
    /** Covers what is under it: the clear space round a note. */
    WHITE(1),
    /** A light tint. */
    LIGHT(0.93),
    /** A tint that can be told from the light one. */
    SHADE(0.82),
    /** Solid black: dots and arrow heads. */
    BLACK(0);

    private final double brightness;

    Fill(double brightness) {
        this.brightness = brightness;
    }

    /** From 0, black, to 1, white. */
    public double brightness() {
        return brightness;
    }
}
