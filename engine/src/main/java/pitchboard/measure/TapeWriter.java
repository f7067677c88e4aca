package pitchboard.measure;

import java.math.BigInteger;

/** Writes lengths as they are read off a tape: rounded once, to a line the tape has, with the fraction reduced. */
public final class TapeWriter {
    private static final Ratio INCHES_PER_FOOT = Ratio.of(12);

    private TapeWriter() {}

    /** A size: feet, inches and fraction, or millimetres. */
    public static String write(Length length, Tape tape, Tape.Style style) {
        return tape.isInches()
                ? feetAndInches(length, tape.graduation(), style)
                : metricOnTape(length, tape.graduation(), style);
    }

    /** A position along a board, read from a tape hooked at its end: inches alone, or millimetres. */
    public static String writeRunning(Length length, Tape tape, Tape.Style style) {
        return tape.isInches()
                ? inches(length, tape.graduation(), style)
                : metricOnTape(length, tape.graduation(), style);
    }

    /**
     * Feet, inches and fraction: {@code 8'-9 3/4"}, {@code 10'-0 1/2"}; inches alone under one foot.
     *
     * @throws IllegalArgumentException when the graduation is not of the inch
     */
    public static String feetAndInches(Length length, Graduation graduation, Tape.Style style) {
        Length line = onInchTape(length, graduation);
        Ratio inches = line.abs().inInches();
        BigInteger feet = inches.dividedBy(INCHES_PER_FOOT).floor();
        if (feet.signum() == 0) {
            return sign(line, style) + mixed(inches, style) + inchMark(style);
        }
        Ratio rest = inches.minus(INCHES_PER_FOOT.times(Ratio.of(feet, BigInteger.ONE)));
        String zero = rest.signum() > 0 && rest.compareTo(Ratio.ONE) < 0 ? "0 " : "";
        return sign(line, style) + feet + footMark(style) + "-" + zero + mixed(rest, style) + inchMark(style);
    }

    /**
     * Inches and fraction, however long: {@code 105 3/4"}.
     *
     * @throws IllegalArgumentException when the graduation is not of the inch
     */
    public static String inches(Length length, Graduation graduation, Tape.Style style) {
        Length line = onInchTape(length, graduation);
        return sign(line, style) + mixed(line.abs().inInches(), style) + inchMark(style);
    }

    /** Decimal inches with so many places: {@code 105.75 in}. */
    public static String decimalInches(Length length, int places, Tape.Style style) {
        return decimal(length, Length.inches(1), places, style) + " in";
    }

    /** Millimetres with so many places: {@code 2686 mm}. */
    public static String mm(Length length, int places, Tape.Style style) {
        return decimal(length, Length.mm(1), places, style) + " mm";
    }

    /** Metres with so many places: {@code 2.686 m}. */
    public static String metres(Length length, int places, Tape.Style style) {
        return decimal(length, Length.mm(1000), places, style) + " m";
    }

    /** A number from zero up: {@code 9 3/4}, {@code 3/4}, {@code 9}. */
    static String mixed(Ratio number, Tape.Style style) {
        BigInteger whole = number.floor();
        Ratio part = number.minus(Ratio.of(whole, BigInteger.ONE));
        if (part.isZero()) {
            return whole.toString();
        }
        String fraction = part.numerator() + stroke(style) + part.denominator();
        return whole.signum() == 0 ? fraction : whole + " " + fraction;
    }

    private static Length onInchTape(Length length, Graduation graduation) {
        if (!graduation.isOfTheInch()) {
            throw new IllegalArgumentException("no tape shows inches in steps of " + graduation);
        }
        return length.rounded(graduation);
    }

    private static String metricOnTape(Length length, Graduation graduation, Tape.Style style) {
        return mm(length.rounded(graduation), graduation == Graduation.MILLIMETRE ? 0 : 1, style);
    }

    /** Rounds once, also when the length has a root in it. */
    private static String decimal(Length length, Length unit, int places, Tape.Style style) {
        Length step = unit.times(Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(places)));
        Length line = length.rounded(step);
        return sign(line, style) + Decimals.fixed(line.abs().over(unit), places);
    }

    private static String sign(Length line, Tape.Style style) {
        if (!line.isNegative()) {
            return "";
        }
        return style == Tape.Style.PRINTED ? "\u2212" : "-";
    }

    private static String footMark(Tape.Style style) {
        return style == Tape.Style.PRINTED ? "\u2032" : "'";
    }

    private static String inchMark(Tape.Style style) {
        return style == Tape.Style.PRINTED ? "\u2033" : "\"";
    }

    private static String stroke(Tape.Style style) {
        return style == Tape.Style.PRINTED ? "\u2044" : "/";
    }
}
