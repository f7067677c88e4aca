package pitchboard.strength;

import pitchboard.measure.Length;

/** A load spread over a plan. */
public record AreaLoad(double nPerMm2) {
    public static final AreaLoad NONE = new AreaLoad(0);

    private static final double PER_PSF = Units.NEWTONS_PER_POUND / (Units.MM_PER_FOOT * Units.MM_PER_FOOT);

    public static AreaLoad psf(double psf) {
        return new AreaLoad(psf * PER_PSF);
    }

    public static AreaLoad kNPerM2(double kNPerM2) {
        return new AreaLoad(kNPerM2 / 1e3);
    }

    public double psf() {
        return nPerMm2 / PER_PSF;
    }

    public double kNPerM2() {
        return nPerMm2 * 1e3;
    }

    public AreaLoad plus(AreaLoad other) {
        return new AreaLoad(nPerMm2 + other.nPerMm2);
    }

    /** What a member carries along its length when it takes a strip this wide. */
    public LineLoad across(Length strip) {
        return new LineLoad(nPerMm2 * strip.approxMm());
    }

    public boolean isPositive() {
        return nPerMm2 > 0;
    }
}
