package pitchboard.measure;

/**
 * The tape the crew holds: how lengths are shown and marked.
 *
 * @param units feet and inches, or millimetres
 * @param graduation the finest line that is marked to
 */
public record Tape(Units units, Graduation graduation) {
    public static final Tape SIXTEENTHS = new Tape(Units.INCHES, Graduation.SIXTEENTH_INCH);
    public static final Tape MILLIMETRES = new Tape(Units.MILLIMETRES, Graduation.MILLIMETRE);

    /** What the numbers on the tape count. */
    public enum Units {
        INCHES,
        MILLIMETRES
    }

    /** How what is on the tape is lettered. */
    public enum Style {
        /** What any keyboard has: {@code 8'-9 3/4"}. */
        PLAIN,
        /** Primes, and a fraction stroke so that a typesetter can stack the fraction: {@code 8′-9 3⁄4″}. */
        PRINTED
    }

    public Tape {
        if (graduation.isOfTheInch() != (units == Units.INCHES)) {
            throw new IllegalArgumentException("a tape in " + units + " has no graduation of " + graduation);
        }
    }

    public boolean isInches() {
        return units == Units.INCHES;
    }
}
