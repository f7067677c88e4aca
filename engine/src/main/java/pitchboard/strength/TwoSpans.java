package pitchboard.strength;

import pitchboard.measure.Length;

/**
 * A beam over three supports under a load spread evenly, as if it ran on over the middle one (the equation of three
 * moments). In each of its two spans it bends no more than a beam that ends there: {@code a² − a·b + b² ≤ max(a, b)²}.
 *
 * @param first above zero
 * @param second above zero
 */
public record TwoSpans(Length first, Length second) {
    public TwoSpans {
        if (!first.isPositive() || !second.isPositive()) {
            throw new IllegalArgumentException("both spans are above zero, not " + first + " and " + second);
        }
    }

    public Length longer() {
        return Length.max(first, second);
    }

    /** {@code w·(a³ + b³) / (8·(a + b))}, with the upper edge in tension. */
    public Moment overSupport(LineLoad load) {
        double a = first.approxMm();
        double b = second.approxMm();
        return new Moment(load.nPerMm() * (a * a * a + b * b * b) / (8 * (a + b)));
    }

    /** {@code w·a / 2 − M / a}: below zero where the short span lifts. */
    public Force atFirstEnd(LineLoad load) {
        return atEnd(load, first);
    }

    public Force atSecondEnd(LineLoad load) {
        return atEnd(load, second);
    }

    private Force atEnd(LineLoad load, Length span) {
        double mm = span.approxMm();
        return new Force(load.nPerMm() * mm / 2 - overSupport(load).nMm() / mm);
    }

    /** {@code w·(a + b) / 2 + M / a + M / b}. */
    public Force atMiddle(LineLoad load) {
        return beside(load, first).plus(beside(load, second));
    }

    /** The greatest anywhere: beside the middle support, {@code w·l / 2 + M / l}. */
    public Force shear(LineLoad load) {
        return new Force(
                Math.max(beside(load, first).newtons(), beside(load, second).newtons()));
    }

    private Force beside(LineLoad load, Length span) {
        double mm = span.approxMm();
        return new Force(load.nPerMm() * mm / 2 + overSupport(load).nMm() / mm);
    }
}
