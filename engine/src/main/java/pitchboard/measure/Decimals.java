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
        double kept = Math.abs(value) * POWERS[KEPT_PLACES];
        // Not Math.rint: the browser's goes wrong above 2^63 and rounds halves the other way.
        String units = kept < EXACT_DOUBLES ? unitsOf((long) (kept + 0.5), places) : unitsOfLarge(value, places);
        return placed(value < 0, units, places);
    }

    /** With at most so many places, of 0 to 9, and no zeros at the end. */
    public static String trimmed(double value, int mostPlaces) {
        return withoutEndZeros(fixed(value, mostPlaces));
    }

    private static String unitsOf(long kept, int places) {
        long unit = POWERS[KEPT_PLACES - places];
        return Long.toString((kept + unit / 2) / unit);
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
