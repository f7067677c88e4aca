package pitchboard.measure;

import java.math.BigInteger;

/**
 * An exact number without a unit, always in lowest terms with a positive denominator.
 *
 * <p>Values that fit live in two longs; larger ones move to big integers by themselves.
 */
public final class Ratio implements Quantity, Comparable<Ratio> {
    public static final Ratio ZERO = of(0);
    public static final Ratio ONE = of(1);

    private static final Ratio HALF = of(1, 2);
    /** Below this, the sum of two still fits a long. */
    private static final long NARROW = 1L << 62;

    /** Numerator and denominator of a narrow value; the denominator is 0 when the value is wide. */
    private final long narrowNumerator;

    private final long narrowDenominator;
    /** Numerator and denominator of a wide value; both 0 when the value is narrow. */
    private final BigInteger wideNumerator;

    private final BigInteger wideDenominator;

    private Ratio(long numerator, long denominator) {
        this.narrowNumerator = numerator;
        this.narrowDenominator = denominator;
        this.wideNumerator = BigInteger.ZERO;
        this.wideDenominator = BigInteger.ZERO;
    }

    private Ratio(BigInteger numerator, BigInteger denominator) {
        this.narrowNumerator = 0;
        this.narrowDenominator = 0;
        this.wideNumerator = numerator;
        this.wideDenominator = denominator;
    }

    public static Ratio of(long whole) {
        return of(whole, 1);
    }

    /**
     * The quotient of two whole numbers, reduced.
     *
     * @throws ArithmeticException when the denominator is zero
     */
    public static Ratio of(long numerator, long denominator) {
        if (denominator == 0) {
            throw new ArithmeticException("a ratio needs a denominator other than zero");
        }
        if (numerator == Long.MIN_VALUE || denominator == Long.MIN_VALUE) {
            return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
        }
        long divisor = denominator == 1 ? 1 : Whole.greatestCommonDivisor(Math.abs(numerator), Math.abs(denominator));
        long sign = denominator < 0 ? -1 : 1;
        return inLowestTerms(sign * (numerator / divisor), sign * (denominator / divisor));
    }

    private static Ratio inLowestTerms(long top, long bottom) {
        return isNarrow(top, bottom)
                ? new Ratio(top, bottom)
                : new Ratio(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
    }

    /**
     * The quotient of two whole numbers of any size, reduced.
     *
     * @throws ArithmeticException when the denominator is zero
     */
    public static Ratio of(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("a ratio needs a denominator other than zero");
        }
        if (numerator.bitLength() < 63 && denominator.bitLength() < 63) {
            return of(numerator.longValue(), denominator.longValue());
        }
        BigInteger divisor = numerator.gcd(denominator);
        BigInteger signed = denominator.signum() < 0 ? divisor.negate() : divisor;
        BigInteger top = numerator.divide(signed);
        BigInteger bottom = denominator.divide(signed);
        return top.bitLength() < 62 && bottom.bitLength() < 62
                ? new Ratio(top.longValue(), bottom.longValue())
                : new Ratio(top, bottom);
    }

    private static boolean isNarrow(long numerator, long denominator) {
        return numerator > -NARROW && numerator < NARROW && denominator < NARROW;
    }

    private boolean isNarrow() {
        return narrowDenominator != 0;
    }

    public BigInteger numerator() {
        return isNarrow() ? BigInteger.valueOf(narrowNumerator) : wideNumerator;
    }

    /** Always positive. */
    public BigInteger denominator() {
        return isNarrow() ? BigInteger.valueOf(narrowDenominator) : wideDenominator;
    }

    public Ratio plus(Ratio other) {
        return isNarrow() && other.isNarrow()
                ? plus(other.narrowNumerator, other.narrowDenominator)
                : widePlus(other.numerator(), other.denominator());
    }

    public Ratio minus(Ratio other) {
        return isNarrow() && other.isNarrow()
                ? plus(-other.narrowNumerator, other.narrowDenominator)
                : plus(other.negated());
    }

    /** Both narrow. */
    private Ratio plus(long top, long bottom) {
        if (narrowDenominator == bottom) {
            return of(narrowNumerator + top, bottom);
        }
        if (!Whole.productFits(narrowNumerator, bottom)
                || !Whole.productFits(top, narrowDenominator)
                || !Whole.productFits(narrowDenominator, bottom)) {
            return widePlus(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
        }
        long newTop = narrowNumerator * bottom + top * narrowDenominator;
        long newBottom = narrowDenominator * bottom;
        // Because a whole number shares nothing with the other's denominator, such a sum is in lowest terms.
        return narrowDenominator == 1 || bottom == 1 ? inLowestTerms(newTop, newBottom) : of(newTop, newBottom);
    }

    private Ratio widePlus(BigInteger top, BigInteger bottom) {
        return of(
                numerator().multiply(bottom).add(top.multiply(denominator())),
                denominator().multiply(bottom));
    }

    public Ratio times(Ratio other) {
        if (isNarrow() && other.isNarrow()) {
            return times(other.narrowNumerator, other.narrowDenominator);
        }
        return of(numerator().multiply(other.numerator()), denominator().multiply(other.denominator()));
    }

    public Ratio times(long factor) {
        return isNarrow() && isNarrow(factor, 1) ? times(factor, 1) : times(of(factor));
    }

    /** Both narrow. What can be cancelled is cancelled crosswise first: then the product is in lowest terms. */
    private Ratio times(long top, long bottom) {
        long across = bottom == 1 ? 1 : Whole.greatestCommonDivisor(Math.abs(narrowNumerator), bottom);
        long back = narrowDenominator == 1 ? 1 : Whole.greatestCommonDivisor(Math.abs(top), narrowDenominator);
        return productInLowestTerms(narrowNumerator / across, top / back, narrowDenominator / back, bottom / across);
    }

    private static Ratio productInLowestTerms(long a, long b, long c, long d) {
        return Whole.productFits(a, b) && Whole.productFits(c, d)
                ? inLowestTerms(a * b, c * d)
                : new Ratio(Whole.product(a, b), Whole.product(c, d));
    }

    /**
     * The exact quotient.
     *
     * @throws ArithmeticException when the divisor is zero
     */
    public Ratio dividedBy(Ratio divisor) {
        return times(divisor.inverse());
    }

    /**
     * One divided by this.
     *
     * @throws ArithmeticException when this is zero
     */
    public Ratio inverse() {
        return isNarrow() ? of(narrowDenominator, narrowNumerator) : of(wideDenominator, wideNumerator);
    }

    public Ratio negated() {
        return isNarrow()
                ? new Ratio(-narrowNumerator, narrowDenominator)
                : new Ratio(wideNumerator.negate(), wideDenominator);
    }

    public Ratio abs() {
        return signum() < 0 ? negated() : this;
    }

    public int signum() {
        return isNarrow() ? Long.signum(narrowNumerator) : wideNumerator.signum();
    }

    public boolean isZero() {
        return signum() == 0;
    }

    public boolean isWhole() {
        return isNarrow() ? narrowDenominator == 1 : wideDenominator.equals(BigInteger.ONE);
    }

    /** The largest whole number that is not above this. */
    public BigInteger floor() {
        return isNarrow()
                ? BigInteger.valueOf(Math.floorDiv(narrowNumerator, narrowDenominator))
                : Whole.floorDivide(wideNumerator, wideDenominator);
    }

    /** The nearest whole number; a half goes away from zero. */
    public BigInteger nearest() {
        BigInteger nearest = abs().plus(HALF).floor();
        return signum() < 0 ? nearest.negate() : nearest;
    }

    /** The nearest double, for drawing and for figures that are shown rounded. */
    public double approx() {
        return isNarrow()
                ? Whole.approximateQuotient(narrowNumerator, narrowDenominator)
                : Whole.approximateQuotient(wideNumerator, wideDenominator);
    }

    @Override
    public int compareTo(Ratio other) {
        if (isNarrow() && other.isNarrow()) {
            return Whole.compareProducts(
                    narrowNumerator, other.narrowDenominator, other.narrowNumerator, narrowDenominator);
        }
        return numerator()
                .multiply(other.denominator())
                .compareTo(other.numerator().multiply(denominator()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ratio that && compareTo(that) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * numerator().hashCode() + denominator().hashCode();
    }

    /** For people who debug: {@code 7/8}, {@code 12}. */
    @Override
    public String toString() {
        return isWhole() ? numerator().toString() : numerator() + "/" + denominator();
    }
}
