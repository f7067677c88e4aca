package pitchboard.intake.form;

import java.math.BigInteger;
import pitchboard.measure.Decimals;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/** Writes lengths for a job file: always with a unit, so that they read the same whatever bare numbers count. */
final class LengthText {
    /** As many as the tape reader takes. */
    private static final int MOST_PLACES = 9;

    private static final Ratio SCALE = Ratio.of(BigInteger.TEN.pow(MOST_PLACES), BigInteger.ONE);

    private LengthText() {}

    /**
     * Exactly, in these units if they can say it, in the others if not.
     *
     * @throws IllegalArgumentException for a length that nobody can have typed, such as a seventh of an inch
     */
    static String exact(Length length, Tape.Units units) {
        boolean onTape = length.rounded(Graduation.SIXTY_FOURTH_INCH).equals(length);
        if (units == Tape.Units.INCHES && onTape) {
            return feetAndInches(length);
        }
        if (units == Tape.Units.INCHES && isDecimal(length.inInches())) {
            return Decimals.trimmed(length.inInches(), MOST_PLACES) + " in";
        }
        if (isDecimal(length.inMm())) {
            return Decimals.trimmed(length.inMm(), MOST_PLACES) + " mm";
        }
        if (units == Tape.Units.MILLIMETRES) {
            return exact(length, Tape.Units.INCHES);
        }
        throw new IllegalArgumentException("no tape text says exactly " + length);
    }

    private static boolean isDecimal(Ratio value) {
        return value.times(SCALE).isWhole();
    }

    /** The nearest sixteenth or millimetre, for messages. */
    static String rounded(Length length, Tape.Units units) {
        return units == Tape.Units.INCHES
                ? feetAndInches(length.rounded(Graduation.SIXTEENTH_INCH))
                : TapeWriter.mm(length, 0, Tape.Style.PLAIN);
    }

    private static String feetAndInches(Length length) {
        return TapeWriter.feetAndInches(length, Graduation.SIXTY_FOURTH_INCH, Tape.Style.PLAIN);
    }
}
