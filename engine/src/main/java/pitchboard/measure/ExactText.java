package pitchboard.measure;

import java.math.BigInteger;

/** Writes lengths without losing anything, for worksheets and for other programs. */
public final class ExactText {
    private static final int MOST_PLACES = 6;
    private static final Ratio SCALE = Ratio.of(BigInteger.TEN.pow(MOST_PLACES), BigInteger.ONE);

    private ExactText() {}

    /**
     * Exact and with its unit: {@code 7 5/7 in}, {@code 181.2 mm}, {@code 181 3/7 mm}. A length along a slope has no
     * exact number; it is rounded to a millionth of the unit and says so: {@code ≈ 12.206556 in}.
     */
    public static String write(Length length, Tape.Units units) {
        boolean inches = units == Tape.Units.INCHES;
        Length unit = inches ? Length.inches(1) : Length.mm(1);
        String name = inches ? " in" : " mm";
        if (!length.isRational()) {
            Length rounded = length.rounded(unit.times(SCALE.inverse()));
            return "≈ " + Decimals.fixed(rounded.over(unit), MOST_PLACES) + name;
        }
        Ratio value = length.over(unit);
        return (inches ? mixed(value) : decimalOrMixed(value)) + name;
    }

    /** A whole number with a fraction: {@code 7 5/7}, {@code -1/3}. */
    public static String mixed(Ratio value) {
        return (value.signum() < 0 ? "-" : "") + TapeWriter.mixed(value.abs(), Tape.Style.PLAIN);
    }

    /** Decimals when six places hold the number, a mixed number when not: {@code 181.2}, {@code 181 3/7}. */
    public static String decimalOrMixed(Ratio value) {
        return value.times(SCALE).isWhole() ? Decimals.trimmed(value, MOST_PLACES) : mixed(value);
    }
}
