package pitchboard.strength.fasteners;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import pitchboard.source.Source;
import pitchboard.strength.Force;
import pitchboard.strength.timber.Nds;

/**
 * The yield limit equations, NDS 2018 12.3.1, 12.3.2 and Table 12.3.1A and B, each mode by itself.
 *
 * <pre>{@code
 *   Im = D lm Fem / Rd              IIIm = k2 D lm Fem / ((1 + 2 Re) Rd)
 *   Is = D ls Fes / Rd              IIIs = k3 D ls Fem / ((2 + Re) Rd)
 *   II = k1 D ls Fes / Rd           IV   = (D² / Rd) √(2 Fem Fyb / (3 (1 + Re)))
 *   D in, lm ls in, Fe Fyb psi, Re = Fem / Fes, Rt = lm / ls; in double shear Is, IIIs and IV count twice, II and IIIm not
 * }</pre>
 */
public final class YieldLimit {
    static final Source SOURCE = Nds.SPECIFICATION.read("12.3.1");

    private final double d;
    private final double lm;
    private final double ls;
    private final double fem;
    private final double fes;
    private final double fyb;
    private final double re;
    private final double rt;
    private final Shear shear;
    private final Reduction reduction;

    /** How many planes the fastener is sheared in. */
    public enum Shear {
        SINGLE,
        /** The main member lies between two side members that are alike. */
        DOUBLE
    }

    YieldLimit(Fastener fastener, Member main, Member side, Shear shear) {
        this.d = fastener.root().inches();
        this.lm = main.inches();
        this.ls = side.inches();
        this.fem = main.bearing().psi();
        this.fes = side.bearing().psi();
        this.fyb = fastener.bendingYield().psi();
        this.re = fem / fes;
        this.rt = lm / ls;
        this.shear = shear;
        this.reduction = new Reduction(fastener, Math.max(main.angle(), side.angle()));
    }

    /** What each mode allows, for every mode that this shear has. */
    Map<Mode, Force> modes() {
        Map<Mode, Force> modes = new EnumMap<>(Mode.class);
        for (Mode mode : Mode.values()) {
            find(mode).ifPresent(force -> modes.put(mode, force));
        }
        return modes;
    }

    Reduction reduction() {
        return reduction;
    }

    private Optional<Force> find(Mode mode) {
        boolean twice = shear == Shear.DOUBLE;
        if (twice && (mode == Mode.II || mode == Mode.IIIM)) {
            return Optional.empty();
        }
        int planes = twice && mode != Mode.IM ? 2 : 1;
        return Optional.of(Force.pounds(planes * yieldsAt(mode) / reduction.of(mode)));
    }

    private double yieldsAt(Mode mode) {
        return switch (mode) {
            case IM -> d * lm * fem;
            case IS -> d * ls * fes;
            case II -> k1() * d * ls * fes;
            case IIIM -> k2() * d * lm * fem / (1 + 2 * re);
            case IIIS -> k3() * d * ls * fem / (2 + re);
            case IV -> d * d * Math.sqrt(2 * fem * fyb / (3 * (1 + re)));
        };
    }

    /** {@code k1 = (√(Re + 2Re²(1 + Rt + Rt²) + Rt² Re³) − Re(1 + Rt)) / (1 + Re)}. */
    double k1() {
        double root = Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re);
        return (root - re * (1 + rt)) / (1 + re);
    }

    /** {@code k2 = −1 + √(2(1 + Re) + 2 Fyb (1 + 2Re) D² / (3 Fem lm²))}. */
    double k2() {
        return -1 + Math.sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d * d / (3 * fem * lm * lm));
    }

    /** {@code k3 = −1 + √(2(1 + Re)/Re + 2 Fyb (2 + Re) D² / (3 Fem ls²))}. */
    double k3() {
        return -1 + Math.sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * d * d / (3 * fem * ls * ls));
    }
}
