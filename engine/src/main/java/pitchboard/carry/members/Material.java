package pitchboard.carry.members;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Elastic;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;

/** One board of one wood, as a standard judges it where it is used. */
public interface Material {
    /** Such as {@code Hem-Fir No.2}. */
    String name();

    /** Bending with the load along the wide face, the edge held by the treads. */
    Answer<Resistance> onEdge();

    /** Bending with the load on the wide face. */
    Answer<Resistance> onFlat();

    /** Bending with the load along the wide face, held only at points so far apart. */
    Answer<Resistance> onEdgeHeldEvery(Length apart);

    /** Pressure along the grain of a post that may buckle over this length. */
    Answer<Resistance> asPost(Length free);

    Resistance shear();

    /**
     * Pressure across the grain.
     *
     * @param length of the support along the grain
     */
    Resistance bearing(Length length);

    Resistance modulus();

    /**
     * Bending together with what acts along the grain.
     *
     * @param section that bends
     * @param free length that can buckle up or down
     * @param heldEvery length that can buckle sideways
     */
    Answer<Interaction> interaction(Section section, Length free, Length heldEvery);

    /** How much a lasting load adds to a deflection: 0 where the standard does not ask. */
    double creep();

    /** How stiff it is in the plane of its wide face, as it is used. */
    Elastic elastic();

    /** The standard's word on a notch in the edge in tension at a support, as what is left of the shear it bears. */
    Answer<Factor> notchAtSupport(Length depth, Length left, Length away);

    /** Where the standard speaks of members. */
    Source source();
}
