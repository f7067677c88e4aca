package pitchboard.carry;

import pitchboard.measure.Length;
import pitchboard.source.Figure;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Moment;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** The checks of one tread board: a load at one place, or people all over it, whichever asks more. */
final class TreadChecks {
    private static final String POINT = "one load on one board";
    private static final String SPREAD = "people all over the board";

    private final Basis basis;
    private final TreadCase it;
    private final Material wood;
    private final MemberChecks checks;
    private final SimpleBeam beam;

    TreadChecks(Basis basis, TreadCase it, Material wood) {
        this.basis = basis;
        this.it = it;
        this.wood = wood;
        this.checks = basis.checks();
        this.beam = new SimpleBeam(it.span());
    }

    private Units units() {
        return basis.units();
    }

    private Force point() {
        return basis.loads().pointRaised();
    }

    private LineLoad dead() {
        return basis.loads().deadAlone(it.lies().breadth());
    }

    Answer<Utilisation> bending() {
        double own = beam.moment(dead()).nMm();
        Moment one = new Moment(own + beam.moment(point()).nMm());
        LineLoad people = basis.loads().spread(it.lies().breadth());
        Moment all = beam.moment(people);
        boolean pointGoverns = one.nMm() >= all.nMm();
        Figure figure = pointGoverns
                ? MemberChecks.figure(
                        "M",
                        "bending moment, the load midway between stringers",
                        "P·s ÷ 4 + wD·s² ÷ 8",
                        units().show(one),
                        p(),
                        s(),
                        new Figure.Input("wD", units().show(dead())))
                : MemberChecks.figure(
                        "M",
                        "bending moment",
                        "w·s² ÷ 8",
                        units().show(all),
                        new Figure.Input("w", units().show(people)),
                        s());
        Moment moment = pointGoverns ? one : all;
        return wood.onFlat().map(may -> checks.bending(pointGoverns ? POINT : SPREAD, figure, moment, it.lies(), may));
    }

    /** The load close beside a stringer. */
    Utilisation shear() {
        Force force = new Force(point().newtons() + beam.endReaction(dead()).newtons());
        Figure figure =
                MemberChecks.figure("V", "shear, the load beside a stringer", "P + wD·s ÷ 2", units().show(force), p());
        return checks.shear(POINT, figure, force, it.lies(), wood.shear());
    }

    /** The load over one stringer. */
    Utilisation bearing() {
        Force force = new Force(point().newtons() + 2 * beam.endReaction(dead()).newtons());
        Figure figure =
                MemberChecks.figure("R", "load of a board on one stringer", "P + wD·s", units().show(force), p());
        return checks.bearing(
                POINT,
                figure,
                force,
                it.lies().breadth(),
                it.bearing(),
                wood.bearing(it.lies().breadth()));
    }

    /** How far the load alone makes it sag. */
    Utilisation deflection() {
        Force force = basis.loads().point().load();
        double mm = beam.deflectionMm(force, wood.modulus().value(), it.lies());
        Limits.Sag limit = sag();
        Figure figure = MemberChecks.figure(
                "y",
                "how far the load makes it sag",
                "P·s³ ÷ (48·E·I)",
                Units.near(mm),
                new Figure.Input("P", units().show(force)),
                s(),
                new Figure.Input("E", units().show(wood.modulus().value())),
                new Figure.Input("I", units().inertia(it.lies())));
        return checks.deflection(
                POINT,
                figure,
                mm,
                it.span(),
                limit.part(),
                wood.modulus(),
                MemberChecks.partOf(it.span(), limit.part(), limit.source()));
    }

    private Limits.Sag sag() {
        return basis.isEurocode() ? Limits.SAG_AT_ONCE : Limits.TREAD_SAG;
    }

    /** The load at the very end of the board, past the outer stringer. */
    Answer<Utilisation> overhang() {
        Moment moment = new Moment(point().newtons() * it.overhang().approxMm());
        Figure figure = MemberChecks.figure(
                "M",
                "bending moment over the outer stringer, the load at the end of the board",
                "P·o",
                units().show(moment),
                p(),
                new Figure.Input("o", it.overhang()));
        return wood.onFlat().map(may -> checks.bending(POINT, figure, moment, it.lies(), may));
    }

    /** How far apart stringers may stand under this board: {@code 4·F·S / P} and {@code √(48·E·I / (n·P))}. */
    Answer<TreadSpacing> spacing(String name) {
        return wood.onFlat().map(may -> {
            double bending = 4 * may.value().nPerMm2() * it.lies().modulusMm3() / point().newtons();
            double stiff = Math.sqrt(48
                    * wood.modulus().value().nPerMm2()
                    * it.lies().inertiaMm4()
                    / (sag().part() * basis.loads().point().load().newtons()));
            Length least = Units.near(Math.min(bending, stiff));
            return new TreadSpacing(name, least, bending < stiff ? "bending" : "deflection");
        });
    }

    private Figure.Input p() {
        return new Figure.Input("P", units().show(point()));
    }

    private Figure.Input s() {
        return new Figure.Input("s", it.span());
    }
}
