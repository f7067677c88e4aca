package pitchboard.carry;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;

/** One board of one wood, as a standard judges it where it is used. */
interface Material {
    /** Such as {@code Hem-Fir No.2}. */
    String name();

    /** Bending with the load along the wide face, the edge held by the treads. */
    Answer<Resistance> onEdge();

    /** Bending with the load on the wide face. */
    Answer<Resistance> onFlat();

    Resistance shear();

    /**
     * Pressure across the grain.
     *
     * @param length of the support along the grain
     */
    Resistance bearing(Length length);

    Resistance modulus();

    /**
     * Bending and pressure along the grain together, at most 1.
     *
     * @param section that bends
     * @param free length that can buckle up or down
     * @param heldEvery length that can buckle sideways
     */
    Answer<Double> pressed(Stress pressure, Stress bend, Section section, Length free, Length heldEvery);

    /** Bending and a pull along the grain together, at most 1. */
    Answer<Double> pulled(Stress pull, Stress bend);

    /** How much a lasting load adds to a deflection: 0 where the standard does not ask. */
    double creep();

    /** The standard's word on a notch in the edge in tension at a support, as what is left of the shear it bears. */
    Answer<Factor> notchAtSupport(Length depth, Length left, Length away);

    /** Where the standard speaks of members. */
    Source source();
}
