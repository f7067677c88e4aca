package pitchboard.measure;

import java.math.BigInteger;

/**
 * The exact number {@code rational + coefficient * sqrt(radicand)}; the coefficient is zero exactly when the radicand
 * is one. The arithmetic behind {@link Length}, which gives it its unit.
 */
record Surd(Ratio rational, Ratio coefficient, BigInteger radicand) implements Comparable<Surd> {
    static final Surd ZERO = of(Ratio.ZERO);

    /** When doubles come closer than this part of either, exact arithmetic decides. */
    private static final double DOUBT = 1e-9;

    static Surd of(Ratio rational) {
        return new Surd(rational, Ratio.ZERO, BigInteger.ONE);
    }

    /** Folds a perfect square into the rational part, so that a 3-4-5 slope stays a plain fraction. */
    static Surd of(Ratio rational, Ratio coefficient, BigInteger radicand) {
        if (coefficient.isZero()) {
            return of(rational);
        }
        return Squares.findRoot(radicand)
                .map(root -> of(rational.plus(coefficient.times(Ratio.of(root, BigInteger.ONE)))))
                .orElseGet(() -> new Surd(rational, coefficient, radicand));
    }

    boolean isRational() {
        return coefficient.isZero();
    }

    Surd plus(Surd other) {
        if (other.isRational()) {
            return new Surd(rational.plus(other.rational), coefficient, radicand);
        }
        if (isRational()) {
            return other.plus(this);
        }
        Surd same = other.overRadicand(radicand);
        return withParts(rational.plus(same.rational), coefficient.plus(same.coefficient));
    }

    Surd minus(Surd other) {
        return other.isRational()
                ? new Surd(rational.minus(other.rational), coefficient, radicand)
                : plus(other.negated());
    }

    Surd negated() {
        if (isRational()) {
            return of(rational.negated());
        }
        return new Surd(rational.negated(), coefficient.negated(), radicand);
    }

    Surd times(Ratio factor) {
        if (isRational()) {
            return of(rational.times(factor));
        }
        return withParts(rational.times(factor), coefficient.times(factor));
    }

    Surd times(long factor) {
        return isRational() ? of(rational.times(factor)) : times(Ratio.of(factor));
    }

    /** Over the same radicand, which is known to be no square. */
    private Surd withParts(Ratio newRational, Ratio newCoefficient) {
        return newCoefficient.isZero() ? of(newRational) : new Surd(newRational, newCoefficient, radicand);
    }

    /** The product with {@code factor * sqrt(otherRadicand)}. */
    Surd timesRoot(Ratio factor, BigInteger otherRadicand) {
        if (isRational()) {
            return of(Ratio.ZERO, rational.times(factor), otherRadicand);
        }
        Surd same = overRadicand(otherRadicand);
        Ratio square = Ratio.of(otherRadicand, BigInteger.ONE);
        return of(same.coefficient.times(factor).times(square), same.rational.times(factor), otherRadicand);
    }

    /**
     * The same number written over another radicand.
     *
     * @throws ArithmeticException when the two roots have nothing in common, as for the slopes of two stairs
     */
    private Surd overRadicand(BigInteger other) {
        if (radicand.equals(other)) {
            return this;
        }
        BigInteger root = Squares.findRoot(radicand.multiply(other))
                .orElseThrow(
                        () -> new ArithmeticException("lengths along two different slopes cannot be added exactly"));
        return new Surd(rational, coefficient.times(Ratio.of(root, other)), other);
    }

    int signum() {
        int a = rational.signum();
        int b = coefficient.signum();
        if (a == 0 || b == 0 || a == b) {
            return a != 0 ? a : b;
        }
        double nearly = rational.approx() + root();
        if (Math.abs(nearly) > DOUBT * Math.abs(root())) {
            return nearly > 0 ? 1 : -1;
        }
        int larger = rational.times(rational).compareTo(squareOfRoot());
        return larger > 0 ? a : b;
    }

    private double root() {
        return coefficient.approx() * Math.sqrt(radicand.doubleValue());
    }

    private Ratio squareOfRoot() {
        return coefficient.times(coefficient).times(Ratio.of(radicand, BigInteger.ONE));
    }

    @Override
    public int compareTo(Surd other) {
        if (isRational() && other.isRational()) {
            return rational.compareTo(other.rational);
        }
        if (isRational() || other.isRational() || radicand.equals(other.radicand)) {
            return minus(other).signum();
        }
        if (equals(other)) {
            return 0;
        }
        return compareByRefining(other);
    }

    /** Two different numbers differ in some binary digit, so this ends. */
    private int compareByRefining(Surd other) {
        int bits = 64;
        while (true) {
            Ratio scale = Ratio.of(BigInteger.ONE.shiftLeft(bits), BigInteger.ONE);
            BigInteger gap = times(scale).floor().subtract(other.times(scale).floor());
            if (gap.abs().compareTo(BigInteger.ONE) > 0) {
                return gap.signum();
            }
            bits *= 2;
        }
    }

    /** The largest whole number that is not above this; exact also for the irrational part. */
    BigInteger floor() {
        if (isRational()) {
            return rational.floor();
        }
        BigInteger below = rational.denominator().multiply(coefficient.denominator());
        BigInteger whole = rational.numerator().multiply(coefficient.denominator());
        BigInteger times = coefficient.numerator().multiply(rational.denominator());
        BigInteger root = Squares.floorRoot(times.multiply(times).multiply(radicand));
        // Because the root is irrational, the floor of a negative one is one further down.
        BigInteger rootFloor = times.signum() < 0 ? root.negate().subtract(BigInteger.ONE) : root;
        return Whole.floorDivide(whole.add(rootFloor), below);
    }

    /** A near double, and the same one for equal numbers over different radicands. */
    double approx() {
        if (isRational()) {
            return rational.approx();
        }
        return rational.approx()
                + coefficient.signum() * Math.sqrt(squareOfRoot().approx());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Surd that
                && rational.equals(that.rational)
                && coefficient.signum() == that.coefficient.signum()
                && hasRootOf(that);
    }

    /** Whether the two roots with their coefficients are equal, but for their signs. */
    private boolean hasRootOf(Surd that) {
        return radicand.equals(that.radicand)
                ? coefficient.abs().equals(that.coefficient.abs())
                : squareOfRoot().equals(that.squareOfRoot());
    }

    @Override
    public int hashCode() {
        return 31 * rational.hashCode() + squareOfRoot().hashCode() * coefficient.signum();
    }
}
