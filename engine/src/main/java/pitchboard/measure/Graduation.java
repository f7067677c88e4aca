package pitchboard.measure;

/** The finest lines a tape carries or a pencil is asked for. */
public enum Graduation {
    EIGHTH_INCH(Length.inches(0, 1, 8)),
    SIXTEENTH_INCH(Length.inches(0, 1, 16)),
    THIRTY_SECOND_INCH(Length.inches(0, 1, 32)),
    SIXTY_FOURTH_INCH(Length.inches(0, 1, 64)),
    MILLIMETRE(Length.mm(1)),
    HALF_MILLIMETRE(Length.mm(Ratio.of(1, 2))),
    TENTH_MILLIMETRE(Length.mm(Ratio.of(1, 10)));

    private final Length step;

    Graduation(Length step) {
        this.step = step;
    }

    /** The distance from one line to the next. */
    public Length step() {
        return step;
    }

    /** Whether the lines divide an inch rather than a millimetre. */
    public boolean isOfTheInch() {
        return compareTo(MILLIMETRE) < 0;
    }
}
