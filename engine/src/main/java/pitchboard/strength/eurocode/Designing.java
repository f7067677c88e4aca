package pitchboard.strength.eurocode;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;

/**
 * Design values of solid timber: {@code kmod·Xk / gM} with what else applies (EN 1995-1-1, 2.4.1).
 *
 * @param sharing whether treads or a deck spread the load over several members alike
 */
public record Designing(StrengthClass timber, Service service, Service.Duration duration, boolean sharing) {
    private static final double PARTIAL = 1.3;
    private static final double CRACKS = 0.67;
    private static final double SHARED = 1.1;
    private static final double REFERENCE_DEPTH_MM = 150;

    private List<Factor> common() {
        return List.of(
                new Factor(
                        "kmod",
                        "duration and moisture",
                        service.strength(duration),
                        "service class " + service.number() + ", " + words(duration) + " load",
                        Eurocode.TIMBER.memory("Table 3.1")),
                new Factor(
                        "1/gammaM",
                        "partial factor of the material",
                        1 / PARTIAL,
                        "solid timber: 1 ÷ 1.3; a national annex may say otherwise",
                        Eurocode.TIMBER.read("Table 2.3")));
    }

    private static String words(Service.Duration duration) {
        return switch (duration) {
            case PERMANENT -> "permanent";
            case LONG -> "long-term";
            case MEDIUM -> "medium-term";
            case SHORT -> "short-term";
            case INSTANTANEOUS -> "instantaneous";
        };
    }

    private Resistance design(String what, String meaning, Stress characteristic, Factor... more) {
        List<Factor> factors = new ArrayList<>(common());
        factors.addAll(List.of(more));
        return new Resistance(what + ",k", what + ",d", meaning, characteristic, factors, timber.source());
    }

    /**
     * {@code fm,d}.
     *
     * @param depth of the graded board in the direction of the load; cutting it down earns nothing
     */
    public Resistance bending(Length depth) {
        return design("fm", "bending stress it may bear", timber.bending(), size(depth), system());
    }

    /** {@code kh = min((150 / h)^0.2, 1.3)} below 150 mm. */
    private static Factor size(Length depth) {
        String name = "size";
        double mm = depth.approxMm();
        if (mm >= REFERENCE_DEPTH_MM) {
            return Factor.idle("kh", name, "the board is 150 mm deep or more", Eurocode.TIMBER.memory("3.2(3)"));
        }
        double value = Math.min(Math.pow(REFERENCE_DEPTH_MM / mm, 0.2), 1.3);
        return new Factor(
                "kh",
                name,
                value,
                "the board is only " + Decimals.trimmed(mm, 1) + " mm deep",
                Eurocode.TIMBER.memory("3.2(3)"));
    }

    private Factor system() {
        String name = "load sharing";
        return sharing
                ? new Factor(
                        "ksys", name, SHARED, "several alike, joined so that they share", Eurocode.TIMBER.memory("6.6"))
                : Factor.idle("ksys", name, "no help from its neighbours is counted on", Eurocode.TIMBER.memory("6.6"));
    }

    /** {@code fv,d}, with the part of the breadth that cracks leave. */
    public Resistance shear() {
        Factor cracks = timber.cracksInside()
                ? Factor.idle(
                        "kcr", "cracks", "the published value allows for them", Eurocode.TIMBER.memory("6.1.7(2)"))
                : new Factor(
                        "kcr",
                        "cracks",
                        CRACKS,
                        "cracks take a third of the breadth; a national annex may say otherwise",
                        Eurocode.TIMBER.memory("6.1.7(2)"));
        return design("fv", "shear stress it may bear", timber.shear(), cracks);
    }

    /** {@code fc,90,d}; a short support is not counted on to bear more. */
    public Resistance bearing() {
        return design(
                "fc,90",
                "pressure across the grain it may bear",
                timber.bearing(),
                Factor.idle("kc,90", "bearing area", "nothing more is counted on", Eurocode.TIMBER.memory("6.1.5")));
    }

    /** {@code fc,0,d}. */
    public Resistance compression() {
        return design("fc,0", "pressure along the grain it may bear", timber.compression());
    }

    /** {@code ft,0,d}. */
    public Resistance tension(Length width) {
        return design("ft,0", "pull along the grain it may bear", timber.tension(), size(width));
    }

    /** {@code E0,mean}, for deflections. */
    public Resistance modulus() {
        return new Resistance("E0,mean", "E0,mean", "stiffness", timber.modulus(), List.of(), timber.source());
    }

    /**
     * Against tipping, {@code kcrit} (6.3.3).
     *
     * @param effective length of the edge in compression that nothing holds
     */
    public Factor stability(Section section, Length effective) {
        double slender = relativeSlenderness(section, effective);
        return new Factor(
                "kcrit",
                "stability",
                slender <= 0.75 ? 1 : slender <= 1.4 ? 1.56 - 0.75 * slender : 1 / (slender * slender),
                "relative slenderness " + Decimals.fixed(slender, 2),
                Eurocode.TIMBER.read("6.3.3"));
    }

    /** {@code sqrt(fm,k / sm,crit)}, {@code sm,crit = 0.78·b²·E0,05 / (h·lef)}. */
    double relativeSlenderness(Section section, Length effective) {
        double breadth = section.breadthMm();
        double critical =
                0.78 * breadth * breadth * timber.lowModulus().nPerMm2() / (section.depthMm() * effective.approxMm());
        return Math.sqrt(timber.bending().nPerMm2() / critical);
    }

    /**
     * Against buckling, {@code kc} (6.3.2): {@code 1 / (k + sqrt(k² − r²))}, {@code k = 0.5·(1 + 0.2·(r − 0.3) + r²)}.
     *
     * @param depth of the section in the direction it would buckle
     * @param free length that can buckle
     */
    public Factor buckling(Length depth, Length free) {
        double slender = free.approxMm()
                * Math.sqrt(12)
                / depth.approxMm()
                / Math.PI
                * Math.sqrt(timber.compression().over(timber.lowModulus()));
        double k = 0.5 * (1 + 0.2 * (slender - 0.3) + slender * slender);
        double value = slender <= 0.3 ? 1 : 1 / (k + Math.sqrt(k * k - slender * slender));
        return new Factor(
                "kc",
                "buckling",
                value,
                "relative slenderness " + Decimals.fixed(slender, 2),
                Eurocode.TIMBER.memory("6.3.2"));
    }
}
