package pitchboard.strength;

import pitchboard.measure.Length;

/** A load along a member. */
public record LineLoad(double nPerMm) {
    public static final LineLoad NONE = new LineLoad(0);

    private static final double PER_POUND_PER_FOOT = Units.NEWTONS_PER_POUND / Units.MM_PER_FOOT;

    public static LineLoad poundsPerFoot(double poundsPerFoot) {
        return new LineLoad(poundsPerFoot * PER_POUND_PER_FOOT);
    }

    public double poundsPerFoot() {
        return nPerMm / PER_POUND_PER_FOOT;
    }

    public LineLoad plus(LineLoad other) {
        return new LineLoad(nPerMm + other.nPerMm);
    }

    public LineLoad times(double factor) {
        return new LineLoad(nPerMm * factor);
    }

    /** The whole load over a length. */
    public Force over(Length length) {
        return new Force(nPerMm * length.approxMm());
    }
}
