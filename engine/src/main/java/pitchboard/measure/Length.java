package pitchboard.measure;

import java.math.BigInteger;

/**
 * An exact length. Counted in units of 1/320 mm, so that 1/64 in (127 units) and 0.1 mm (32 units) are both whole; any
 * fraction of the unit is allowed, and one square root for lengths along a slope. Nothing rounds until
 * {@link #rounded} is asked.
 */
public final class Length implements Quantity, Comparable<Length> {
    public static final Length ZERO = new Length(Surd.ZERO);

    private static final Ratio UNITS_PER_INCH = Ratio.of(8128);
    private static final Ratio UNITS_PER_MM = Ratio.of(320);

    private final Surd units;

    private Length(Surd units) {
        this.units = units;
    }

    public static Length inches(long whole) {
        return inches(Ratio.of(whole));
    }

    /** A mixed number of inches: {@code inches(9, 3, 4)} is nine and three quarters. */
    public static Length inches(long whole, long numerator, long denominator) {
        return inches(Ratio.of(whole).plus(Ratio.of(numerator, denominator)));
    }

    public static Length inches(Ratio inches) {
        return new Length(Surd.of(inches.times(UNITS_PER_INCH)));
    }

    public static Length feet(long whole) {
        return inches(Math.multiplyExact(whole, 12L));
    }

    public static Length mm(long whole) {
        return mm(Ratio.of(whole));
    }

    public static Length mm(Ratio millimetres) {
        return new Length(Surd.of(millimetres.times(UNITS_PER_MM)));
    }

    /**
     * The diagonal of a box with these sides: the root of the sum of their squares.
     *
     * @throws ArithmeticException when a side has a square root in it
     */
    public static Length diagonal(Length... sides) {
        Ratio squares = Ratio.ZERO;
        for (Length side : sides) {
            squares = squares.plus(side.inInches().times(side.inInches()));
        }
        BigInteger below = squares.denominator();
        return inches(1)
                .timesRoot(Ratio.of(BigInteger.ONE, below), squares.numerator().multiply(below));
    }

    public Length plus(Length other) {
        return new Length(units.plus(other.units));
    }

    public Length minus(Length other) {
        return new Length(units.minus(other.units));
    }

    public Length negated() {
        return new Length(units.negated());
    }

    public Length abs() {
        return signum() < 0 ? negated() : this;
    }

    public Length times(long factor) {
        return new Length(units.times(factor));
    }

    public Length times(Ratio factor) {
        return new Length(units.times(factor));
    }

    /** The product with {@code factor * sqrt(radicand)}; only a {@link Pitch} knows such factors. */
    Length timesRoot(Ratio factor, BigInteger radicand) {
        return new Length(units.timesRoot(factor, radicand));
    }

    /**
     * One of {@code parts} equal parts, exactly.
     *
     * @throws ArithmeticException when {@code parts} is zero
     */
    public Length dividedBy(long parts) {
        return times(Ratio.of(1, parts));
    }

    /**
     * How many times the other length goes into this one, as an exact ratio.
     *
     * @throws ArithmeticException when the other is zero or either has a square root in it
     */
    public Ratio over(Length other) {
        return rationalUnits().dividedBy(other.rationalUnits());
    }

    /** Whether this is a plain fraction, without a square root. */
    public boolean isRational() {
        return units.isRational();
    }

    /**
     * The number of inches.
     *
     * @throws ArithmeticException when this has a square root in it
     */
    public Ratio inInches() {
        return rationalUnits().dividedBy(UNITS_PER_INCH);
    }

    /**
     * The number of millimetres.
     *
     * @throws ArithmeticException when this has a square root in it
     */
    public Ratio inMm() {
        return rationalUnits().dividedBy(UNITS_PER_MM);
    }

    private Ratio rationalUnits() {
        if (!units.isRational()) {
            throw new ArithmeticException("a length along a slope is no plain fraction; round it first");
        }
        return units.rational();
    }

    /** The nearest line of the tape; a length half way between two lines goes away from zero. */
    public Length rounded(Graduation graduation) {
        return rounded(graduation.step());
    }

    /** The nearest multiple of a rational step; half a step goes away from zero. */
    Length rounded(Length step) {
        if (signum() < 0) {
            return negated().rounded(step).negated();
        }
        return plus(step.dividedBy(2)).roundedDown(step);
    }

    /** The last line of the tape that is not above this. */
    public Length roundedDown(Graduation graduation) {
        return roundedDown(graduation.step());
    }

    private Length roundedDown(Length step) {
        BigInteger steps = units.times(step.rationalUnits().inverse()).floor();
        return step.times(Ratio.of(steps, BigInteger.ONE));
    }

    /** The first line of the tape that is not below this. */
    public Length roundedUp(Graduation graduation) {
        return negated().roundedDown(graduation).negated();
    }

    /** How many whole times the other, positive and rational, length fits into this; negative when this is. */
    public long wholeTimes(Length other) {
        return units.times(other.rationalUnits().inverse()).floor().longValueExact();
    }

    public int signum() {
        return units.signum();
    }

    public boolean isZero() {
        return signum() == 0;
    }

    public boolean isPositive() {
        return signum() > 0;
    }

    public boolean isNegative() {
        return signum() < 0;
    }

    public boolean isMoreThan(Length other) {
        return compareTo(other) > 0;
    }

    public boolean isLessThan(Length other) {
        return compareTo(other) < 0;
    }

    public boolean isAtLeast(Length other) {
        return compareTo(other) >= 0;
    }

    public boolean isAtMost(Length other) {
        return compareTo(other) <= 0;
    }

    public static Length min(Length a, Length b) {
        return a.isAtMost(b) ? a : b;
    }

    public static Length max(Length a, Length b) {
        return a.isAtLeast(b) ? a : b;
    }

    /** Millimetres as a near double: the one-way door to drawing and strength. */
    public double approxMm() {
        return units.approx() / 320;
    }

    @Override
    public int compareTo(Length other) {
        return units.compareTo(other.units);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Length that && units.equals(that.units);
    }

    @Override
    public int hashCode() {
        return units.hashCode();
    }

    /** For people who debug: exact, in inches, {@code 7 5/7 in} or {@code 1/2 + 3/4 sqrt(5) in}. */
    @Override
    public String toString() {
        Ratio whole = units.rational().dividedBy(UNITS_PER_INCH);
        if (isRational()) {
            return whole + " in";
        }
        Ratio root = units.coefficient().dividedBy(UNITS_PER_INCH);
        return whole + " + " + root + " sqrt(" + units.radicand() + ") in";
    }
}
