package pitchboard.strength.timber;

import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;

/**
 * What shear a rectangular beam bears at its end, whole or notched (NDS 2018 3.4.3; the formulas from memory, the square
 * of the first notch formula as the publisher explains it).
 */
public final class Notches {
    private Notches() {}

    /** {@code Vr′ = 2/3·Fv′·b·d}. */
    public static Force whole(Stress shear, Section section) {
        return new Force(2.0 / 3 * shear.nPerMm2() * section.areaMm2());
    }

    /**
     * Notched on the edge in tension: {@code Vr′ = (2/3·Fv′·b·dn)·(dn / d)²}.
     *
     * @param left depth that is left at the notch, {@code dn}
     */
    public static Answer<Force> tensionEdge(Stress shear, Section section, Length left) {
        if (!left.isPositive() || left.isMoreThan(section.depth())) {
            return Answer.unknown("the depth left at a notch is more than nothing and no more than the whole depth");
        }
        double share = left.approxMm() / section.depthMm();
        return Answer.known(whole(shear, section).times(share * share * share));
    }

    /**
     * Notched on the edge in compression: {@code Vr′ = 2/3·Fv′·b·(d − ((d − dn) / dn)·e)}.
     *
     * @param left depth that is left at the notch, {@code dn}
     * @param inside how far the notch reaches in from the inner face of the support, {@code e}; {@code dn} at most
     */
    public static Answer<Force> compressionEdge(Stress shear, Section section, Length left, Length inside) {
        if (!left.isPositive() || left.isMoreThan(section.depth())) {
            return Answer.unknown("the depth left at a notch is more than nothing and no more than the whole depth");
        }
        if (inside.isNegative() || inside.isMoreThan(left)) {
            return Answer.unknown(
                    "the formula holds for a notch that reaches past the support by no more than the depth"
                            + " that is left; take that depth for the whole beam instead");
        }
        double depth = section.depthMm();
        double dn = left.approxMm();
        double effective = depth - (depth - dn) / dn * inside.approxMm();
        return Answer.known(new Force(2.0 / 3 * shear.nPerMm2() * section.breadthMm() * effective));
    }

    /**
     * Hung on fasteners less than five depths from the end: {@code Vr′ = (2/3·Fv′·b·de)·(de / d)²}.
     *
     * @param effective from the edge in compression to the farthest fastener, {@code de}
     */
    public static Answer<Force> atFasteners(Stress shear, Section section, Length effective) {
        return tensionEdge(shear, section, effective);
    }
}
