package pitchboard.measure;

/**
 * A near number with its unit, as strength is reckoned in: a load, a stress, a share. Nothing that is cut hangs on one.
 * Compared after rounding to a billionth of its size, since the last digits differ from machine to machine.
 *
 * @param value in that unit; a finite number
 */
public record Reckoned(double value, Unit unit) implements Quantity, Comparable<Reckoned> {
    private static final int SHOWN_DIGITS = 4;
    private static final double SAME = 1e-9;

    public Reckoned {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a reckoned number is finite, not " + value);
        }
    }

    /** What it counts. A published value keeps the unit it is published in, whatever the tape. */
    public enum Unit {
        PSI("psi", "psi"),
        MILLION_PSI("million psi", "million psi"),
        POUND("lb", "lb"),
        FOOT_POUND("ft·lb", "ft lb"),
        POUND_PER_FOOT("lb/ft", "lb/ft"),
        PSF("lb/ft²", "psf"),
        SQUARE_INCH("in²", "sq in"),
        CUBIC_INCH("in³", "in3"),
        INCH_TO_THE_FOURTH("in⁴", "in4"),
        N_PER_MM2("N/mm²", "N/mm2"),
        KILONEWTON("kN", "kN"),
        KILONEWTON_METRE("kN·m", "kN m"),
        KILONEWTON_PER_METRE("kN/m", "kN/m"),
        KILONEWTON_PER_M2("kN/m²", "kN/m2"),
        SQUARE_MM("mm²", "sq mm"),
        CUBIC_MM("mm³", "mm3"),
        MM_TO_THE_FOURTH("mm⁴", "mm4"),
        /** A plain factor. */
        FACTOR("", ""),
        /** A hundredth. */
        PERCENT("%", "%");

        private final String printed;
        private final String plain;

        Unit(String printed, String plain) {
            this.printed = printed;
            this.plain = plain;
        }

        /** The sign of the unit; empty for a plain factor. */
        public String sign(Tape.Style style) {
            return style == Tape.Style.PRINTED ? printed : plain;
        }
    }

    public static Reckoned factor(double value) {
        return new Reckoned(value, Unit.FACTOR);
    }

    /** A share of one, shown in hundredths. */
    public static Reckoned share(double ofOne) {
        return new Reckoned(ofOne * 100, Unit.PERCENT);
    }

    /** Four digits that count, and never fewer than the whole number; a share of nearly all hides nothing. */
    String write(Tape.Style style) {
        String number = unit == Unit.PERCENT ? percent() : Decimals.trimmed(value, places());
        String shown = style == Tape.Style.PRINTED ? number.replace('-', '\u2212') : number;
        return unit == Unit.FACTOR ? shown : shown + " " + unit.sign(style);
    }

    private String percent() {
        boolean nearlyAll = Math.abs(value - 100) < 1;
        return nearlyAll ? Decimals.trimmed(value, 2) : Decimals.fixed(value, 0);
    }

    private int places() {
        double size = Math.abs(value);
        int places = SHOWN_DIGITS - 1;
        while (size >= 10 && places > 0) {
            size /= 10;
            places--;
        }
        return places;
    }

    /**
     * By size.
     *
     * @throws IllegalArgumentException when the units differ
     */
    @Override
    public int compareTo(Reckoned other) {
        if (unit != other.unit) {
            throw new IllegalArgumentException(unit + " cannot be held against " + other.unit);
        }
        boolean same = Math.abs(value - other.value) <= SAME * Math.max(Math.abs(value), Math.abs(other.value));
        return same ? 0 : Double.compare(value, other.value);
    }
}
