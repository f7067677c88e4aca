package pitchboard.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * Decimal numbers as text: a point, no grouping, halves away from zero, never a minus before zero. The same text on
 * every machine, whatever its language.
 */
public final class Decimals {
    /** A double is first rounded to this many places, so that the last bits of a machine's sine never show. */
    private static final int KEPT_PLACES = 9;

    /** Whole numbers below this are exact in a double. */
    private static final double EXACT_DOUBLES = 1L << 53;

    private static final long[] POWERS = {
        1L, 10L, 100L, 1_000L, 10_000L, 100_000L, 1_000_000L, 10_000_000L, 100_000_000L, 1_000_000_000L
    };

    private Decimals() {}

    /** With exactly so many places: {@code 7.50}. */
    public static String fixed(Ratio value, int places) {
        Ratio scale = Ratio.of(BigInteger.TEN.pow(places), BigInteger.ONE);
        BigInteger units = value.abs().times(scale).nearest();
        return placed(value.signum() < 0, units.toString(), places);
    }

    /** With at most so many places and no zeros at the end: {@code 7.5}. */
    public static String trimmed(Ratio value, int mostPlaces) {
        return withoutEndZeros(fixed(value, mostPlaces));
    }

    /**
     * With exactly so many places, of 0 to 9.
     *
     * @throws IllegalArgumentException when the value is no number or infinite
     */
    public static String fixed(double value, int places) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(value + " cannot be written as a decimal number");
        }
        String units = isSmall(value) ? Long.toString(unitsOf(value, places)) : unitsOfLarge(value, places);
        return placed(value < 0, units, places);
    }

    /** With at most so many places, of 0 to 9, and no zeros at the end. */
    public static String trimmed(double value, int mostPlaces) {
        return withoutEndZeros(fixed(value, mostPlaces));
    }

    /**
     * The nearest number with so many decimals, of 0 to 9; halves go away from zero, and zero has no sign. For doubles
     * that are compared or kept. The library's {@code Math.rint} takes halves the other way in the browser.
     *
     * @throws IllegalArgumentException when the value is no number or infinite
     */
    public static double rounded(double value, int places) {
        if (!isSmall(value)) {
            return Double.parseDouble(fixed(value, places));
        }
        double rounded = unitsOf(value, places) / (double) POWERS[places];
        return value < 0 ? 0.0 - rounded : rounded;
    }

    /**
     * The fraction a double stands for once it is rounded to so many decimals, of 0 to 9: the way back from a tangent or
     * an angle to exact numbers.
     *
     * @throws IllegalArgumentException when the value is no number, or nine million or more
     */
    public static Ratio ratio(double value, int places) {
        if (!isSmall(value)) {
            throw new IllegalArgumentException(value + " is no number below nine million");
        }
        long units = unitsOf(value, places);
        return Ratio.of(value < 0 ? -units : units, POWERS[places]);
    }

    /** Whether a double holds the value with all the places we keep; never for what is no number. */
    private static boolean isSmall(double value) {
        return Math.abs(value) < EXACT_DOUBLES / POWERS[KEPT_PLACES];
    }

    private static long unitsOf(double small, int places) {
        long kept = (long) (Math.abs(small) * POWERS[KEPT_PLACES] + 0.5);
        long unit = POWERS[KEPT_PLACES - places];
        return (kept + unit / 2) / unit;
    }

    private static String unitsOfLarge(double value, int places) {
        BigDecimal kept = new BigDecimal(value).abs().setScale(KEPT_PLACES, RoundingMode.HALF_EVEN);
        return kept.setScale(places, RoundingMode.HALF_UP).unscaledValue().toString();
    }

    private static String placed(boolean negative, String units, int places) {
        String digits = "0".repeat(Math.max(0, places + 1 - units.length())) + units;
        int point = digits.length() - places;
        String text = places == 0 ? digits : digits.substring(0, point) + "." + digits.substring(point);
        return negative && !units.equals("0") ? "-" + text : text;
    }

    private static String withoutEndZeros(String text) {
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
