package pitchboard.carry.members;

import pitchboard.measure.Reckoned;
import pitchboard.source.Figure;
import pitchboard.strength.LineLoad;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** How far one stringer sags, plumb: the level beam's value over the cosine. */
final class StringerSag {
    private static final String SPREAD = "people over the whole flight, and its own weight";

    private final Basis basis;
    private final StringerCase it;
    private final Material wood;
    private final MemberChecks checks;
    private final SimpleBeam beam;

    StringerSag(Basis basis, StringerCase it, Material wood) {
        this.basis = basis;
        this.it = it;
        this.wood = wood;
        this.checks = basis.checks();
        this.beam = new SimpleBeam(it.span());
    }

    private Units units() {
        return basis.units();
    }

    /** By allowable stress what people add; by limit states what is seen at once and in the end. */
    Utilisation deflection() {
        return basis.isEurocode() ? lasting() : ofPeople();
    }

    private Utilisation ofPeople() {
        LineLoad live = basis.loads().live().load().across(it.takes());
        double mm = sag(live);
        Figure figure = MemberChecks.figure(
                "y",
                "how far people make it sag, plumb",
                "5·wQ·L⁴ ÷ (384·E·I·cos a)",
                Units.near(mm),
                new Figure.Input("wQ", units().show(live)),
                l(),
                new Figure.Input("E", units().show(wood.modulus().value())),
                new Figure.Input("I", units().inertia(it.bends())),
                a());
        Limits.Sag usual = Limits.STRINGER_SAG;
        return checks.deflection(
                "people over the whole flight",
                figure,
                mm,
                it.span(),
                usual.part(),
                wood.modulus(),
                MemberChecks.partOf(it.span(), usual.part(), usual.source()));
    }

    private Utilisation lasting() {
        double dead = sag(basis.loads().dead().load().across(it.takes()));
        double live = sag(basis.loads().live().load().across(it.takes()));
        double now = dead + live;
        double last = dead * (1 + wood.creep()) + live * (1 + Limits.LASTING * wood.creep());
        boolean inTheEnd = last * Limits.FINAL_SAG.part() > now * Limits.SAG_AT_ONCE.part();
        Limits.Sag limit = inTheEnd ? Limits.FINAL_SAG : Limits.SAG_AT_ONCE;
        Figure figure = MemberChecks.figure(
                inTheEnd ? "w,fin" : "w,inst",
                inTheEnd ? "how far it sags in the end, plumb" : "how far it sags at once, plumb",
                inTheEnd ? "wG·(1 + kdef) + wQ·(1 + psi2·kdef)" : "wG + wQ",
                Units.near(inTheEnd ? last : now),
                new Figure.Input("wG", Units.near(dead)),
                new Figure.Input("wQ", Units.near(live)),
                new Figure.Input("kdef", Reckoned.factor(wood.creep())));
        return checks.deflection(
                SPREAD,
                figure,
                inTheEnd ? last : now,
                it.span(),
                limit.part(),
                wood.modulus(),
                MemberChecks.partOf(it.span(), limit.part(), limit.source()));
    }

    private double sag(LineLoad load) {
        return beam.deflectionMm(load, wood.modulus().value(), it.bends()) / it.cosine();
    }

    private Figure.Input l() {
        return new Figure.Input("L", it.span());
    }

    private Figure.Input a() {
        return new Figure.Input("a", it.pitch());
    }
}
