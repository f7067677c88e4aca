package pitchboard.strength;

import pitchboard.measure.Length;

/** The longest simple span a member reaches under a load spread evenly, by each thing that can end it. */
public final class Spans {
    private Spans() {}

    /** {@code L = √(8·F·S / w)}: where the bending stress is just what it may be. */
    public static Length byBending(LineLoad load, Section section, Stress bending) {
        double moment = bending.nPerMm2() * section.modulusMm3();
        return Units.near(Math.sqrt(8 * moment / positive(load)));
    }

    /** {@code L = ∛(384·E·I / (5·w·n))}: where the deflection is just the n-th part of the span. */
    public static Length byDeflection(LineLoad load, Section section, Stress modulus, int part) {
        double stiffness = 384 * modulus.nPerMm2() * section.inertiaMm4();
        return Units.near(Math.cbrt(stiffness / (5 * positive(load) * part)));
    }

    /** {@code L = 4·F·A / (3·w)}: where the shear stress at the supports is just what it may be. */
    public static Length byShear(LineLoad load, Section section, Stress shear) {
        return Units.near(4 * shear.nPerMm2() * section.areaMm2() / (3 * positive(load)));
    }

    private static double positive(LineLoad load) {
        if (load.nPerMm() <= 0) {
            throw new IllegalArgumentException("a span is only limited by a load above zero, not " + load);
        }
        return load.nPerMm();
    }
}
