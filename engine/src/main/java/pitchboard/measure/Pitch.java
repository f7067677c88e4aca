package pitchboard.measure;

import java.math.BigInteger;

/**
 * A slope of one rise over one run, kept exact. Turns level, plumb and along-the-slope lengths into each other without
 * rounding; becomes degrees only to be shown or held against a printed limit.
 */
public final class Pitch implements Quantity, Comparable<Pitch> {
    private final Ratio slope;

    private Pitch(Ratio slope) {
        this.slope = slope;
    }

    /** 1 + slope², as {@code radicand / (denominator of slope)²}; most slopes are never asked for it. */
    private BigInteger radicand() {
        BigInteger rise = slope.numerator();
        BigInteger run = slope.denominator();
        return rise.multiply(rise).add(run.multiply(run));
    }

    /**
     * The slope that climbs {@code rise} over {@code run}.
     *
     * @throws ArithmeticException when the run is zero or either has a square root in it
     */
    public static Pitch of(Length rise, Length run) {
        return new Pitch(rise.over(run));
    }

    /** Rise divided by run. */
    public Ratio slope() {
        return slope;
    }

    /** The rise over a level distance. */
    public Length riseOver(Length level) {
        return level.times(slope);
    }

    /**
     * The level distance in which the slope climbs this much.
     *
     * @throws ArithmeticException when the pitch is level
     */
    public Length levelFor(Length rise) {
        return rise.times(slope.inverse());
    }

    /** The distance along the slope that covers a level distance: level / cos. */
    public Length alongForLevel(Length level) {
        return level.timesRoot(Ratio.of(BigInteger.ONE, slope.denominator()), radicand());
    }

    /** The level part of a distance along the slope, and the square depth under a plumb one: length × cos. */
    public Length cosTimes(Length length) {
        BigInteger radicand = radicand();
        return length.timesRoot(Ratio.of(slope.denominator(), radicand), radicand);
    }

    /** The plumb part of a distance along the slope: length × sin. */
    public Length sinTimes(Length length) {
        BigInteger radicand = radicand();
        return length.timesRoot(Ratio.of(slope.numerator(), radicand), radicand);
    }

    /** The plumb height of a band that is this deep square to the slope: depth / cos. */
    public Length plumbForDepth(Length depth) {
        return alongForLevel(depth);
    }

    /** The angle from level in degrees, rounded to a billionth so that every machine gives the same figure. */
    public double degrees() {
        return Decimals.rounded(Math.atan(slope.approx()) * 180 / Math.PI, 9);
    }

    /**
     * Held against a printed angle. Of all whole and broken degrees only 0 and 45 have a rational tangent (Niven's
     * theorem), so a tie anywhere else cannot happen and a billionth of a degree decides.
     */
    public int compareTo(Angle angle) {
        Ratio tangent = angle.degrees().dividedBy(Ratio.of(45));
        if (tangent.isWhole() && tangent.abs().compareTo(Ratio.ONE) <= 0) {
            return slope.compareTo(tangent);
        }
        return Decimals.ratio(degrees(), 9).compareTo(angle.degrees());
    }

    @Override
    public int compareTo(Pitch other) {
        return slope.compareTo(other.slope);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pitch that && slope.equals(that.slope);
    }

    @Override
    public int hashCode() {
        return slope.hashCode();
    }

    @Override
    public String toString() {
        return "pitch " + slope;
    }
}
