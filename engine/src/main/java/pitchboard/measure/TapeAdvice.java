package pitchboard.measure;

import pitchboard.measure.TapeScanner.Token.Kind;

/** What the tape reader says would be right: all its texts in one place. */
final class TapeAdvice {
    static final String A_LENGTH = "a length such as 8' 9 3/4\", 105.75 in or 2686 mm";
    static final String NO_SIGN = "a length without a sign: it is never less than nothing";
    static final String A_UNIT = "a unit: ft, in, mm, cm or m";
    static final String UNIT_BETWEEN_NUMBERS = "a foot mark between two numbers, as in 8' 9 3/4\"";
    static final String FRACTION_AFTER_DASH = "a fraction after the dash, or a foot mark before it";
    static final String INCHES_AFTER_FEET = "inches after the feet, or nothing";
    static final String INCHES_AFTER_DASH = "inches after the dash";
    static final String ONE_SYSTEM = "inches after the feet: a length is written in one system";
    static final String ONE_UNIT = "nothing after the unit: a metric length is written with one unit";
    static final String WHOLE_FEET = "whole feet before inches";
    static final String NOTHING_AFTER_INCHES = "nothing after the inches";
    static final String LOWER_NUMBER = "the lower number of the fraction";
    static final String ONE_STROKE = "one stroke in a fraction";
    static final String NO_ZERO_BELOW = "2, 4, 8, 16, 32 or 64 below the stroke: nothing is divided into no parts";
    static final String WHOLE_IN_FRACTION = "whole numbers above and below the stroke";
    static final String DECIMAL_OR_FRACTION = "either decimals or a fraction, not both";
    static final String TIGHT_DASH = "a space, or a dash with no space beside it: with spaces it could mean less";
    static final String NO_COMMA = "a point before decimals, and nothing between thousands: a comma can mean either";
    static final String ONE_POINT = "one decimal point in a number";
    static final String DIGIT_AFTER_POINT = "a digit after the point";
    static final String FEWER_DIGITS = "at most 9 digits on each side of the point";

    private TapeAdvice() {}

    static String atMostCharacters(int most) {
        return "at most " + most + " characters";
    }

    /** Where a number should stand and something else does. */
    static String number(Kind instead) {
        if (instead == Kind.STROKE) {
            return "a number above the stroke";
        }
        return instead.isUnit() ? "a number before the unit" : A_LENGTH;
    }

    static String tapeFraction(Ratio near) {
        return "halves, quarters, eighths and so on down to sixty-fourths, as on a tape (the nearest is "
                + TapeWriter.mixed(near, Tape.Style.PLAIN) + ")";
    }

    static String lessThanOne(Ratio value, boolean standsAlone) {
        String or = standsAlone ? ", or put a space after the whole number" : "";
        return "a fraction of less than one (write " + TapeWriter.mixed(value, Tape.Style.PLAIN) + or + ")";
    }

    static String lessThanAFoot(Length sum) {
        return "less than 12 inches after the feet (write " + inFeet(sum) + ")";
    }

    static String feetFirst(Length sum) {
        return "feet before inches (write " + inFeet(sum) + ")";
    }

    static String decimalsOfMetric(Ratio value) {
        return "decimals, as metric tapes have no fractions (write " + Decimals.trimmed(value, 6) + ")";
    }

    static String unitAfterFraction(Ratio value) {
        return "a unit after a fraction (write " + TapeWriter.mixed(value, Tape.Style.PLAIN) + " in)";
    }

    private static String inFeet(Length sum) {
        Graduation finest = Graduation.SIXTY_FOURTH_INCH;
        return sum.rounded(finest).equals(sum)
                ? TapeWriter.feetAndInches(sum, finest, Tape.Style.PLAIN)
                : Decimals.trimmed(sum.inInches(), 9) + " in";
    }
}
