package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.measure.Reckoned;
import pitchboard.source.Figure;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Moment;
import pitchboard.strength.Resistance;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/**
 * The checks of one stringer. Plumb loads on a sloping beam: the moment is that of a level beam over the plan, the
 * shear across the board is the reaction times the cosine, the push along it the reaction times the sine.
 */
final class StringerChecks {
    private static final String SPREAD = "people over the whole flight, and its own weight";
    private static final String POINT = "one load at the worst place of one stringer, and the stair's own weight";
    private static final int PLACES = 40;

    private final Basis basis;
    private final StringerCase it;
    private final Material wood;
    private final MemberChecks checks;
    private final SimpleBeam beam;
    private final LineLoad spread;
    private final Length slope;

    StringerChecks(Basis basis, StringerCase it, Material wood) {
        this.basis = basis;
        this.it = it;
        this.wood = wood;
        this.checks = basis.checks();
        this.beam = new SimpleBeam(it.span());
        this.spread = basis.loads().spread(it.takes());
        this.slope = Units.near(it.span().approxMm() / it.cosine());
    }

    Material wood() {
        return wood;
    }

    private Units units() {
        return basis.units();
    }

    /** {@code M = w·L² / 8}. */
    Answer<Utilisation> bending() {
        Moment moment = beam.moment(spread);
        Figure figure =
                MemberChecks.figure("M", "bending moment at mid span", "w·L² ÷ 8", units().show(moment), w(), l());
        return wood.onEdge().map(may -> checks.bending(SPREAD, figure, moment, it.bends(), may));
    }

    /** Bending or shear under one load, whichever is worse. */
    Answer<Utilisation> pointLoad() {
        LineLoad dead = basis.loads().deadAlone(it.takes());
        Force point = basis.loads().pointRaised();
        Moment moment = new Moment(beam.moment(dead).nMm() + beam.moment(point).nMm());
        Figure bent = MemberChecks.figure(
                "M",
                "bending moment, the load at mid span",
                "wD·L² ÷ 8 + P·L ÷ 4",
                units().show(moment),
                new Figure.Input("wD", units().show(dead)),
                l(),
                new Figure.Input("P", units().show(point)));
        Force across = new Force((beam.endReaction(dead).newtons() + point.newtons()) * it.cosine());
        Figure sheared = MemberChecks.figure(
                "V",
                "shear across the board, the load beside a support",
                "(wD·L ÷ 2 + P)·cos a",
                units().show(across),
                new Figure.Input("P", units().show(point)),
                a());
        Utilisation shear = checks.shear(POINT, sheared, across, it.bends(), wood.shear());
        return wood.onEdge().map(may -> {
            Utilisation bending = checks.bending(POINT, bent, moment, it.bends(), may);
            return bending.ratio() >= shear.ratio() ? bending : shear;
        });
    }

    /** {@code V = w·L / 2·cos a}. */
    Utilisation shear() {
        Force across = beam.endReaction(spread).times(it.cosine());
        Figure figure = MemberChecks.figure(
                "V", "shear across the board at its ends", "w·L ÷ 2·cos a", units().show(across), w(), l(), a());
        return checks.shear(SPREAD, figure, across, it.bends(), wood.shear());
    }

    /** Bending with the push or pull along the board, at the worst of many places. */
    Answer<Utilisation> together() {
        Answer<Double> worst = Answer.known(0.0);
        for (int i = 0; i <= PLACES; i++) {
            Length at = it.span().times(i).dividedBy(PLACES);
            worst = worst.then(soFar -> at(at).map(here -> Math.max(soFar, here)));
        }
        return worst.then(ratio -> wood.onEdge().map(may -> together(ratio, may)));
    }

    private Answer<Double> at(Length place) {
        double share = 0.5 - place.approxMm() / it.span().approxMm();
        double along = spread.over(it.span()).newtons() * share * it.sine();
        Stress push = new Stress(Math.abs(along) / it.bends().areaMm2());
        Stress bend = MemberChecks.bending(beam.momentAt(spread, place), it.bends());
        return along >= 0 ? wood.pressed(push, bend, it.bends(), slope, it.step()) : wood.pulled(push, bend);
    }

    private Utilisation together(double ratio, Resistance may) {
        Force push = beam.endReaction(spread).times(it.sine());
        Figure along = MemberChecks.figure(
                "N", "push along the board at its foot", "w·L ÷ 2·sin a", units().show(push), w(), l(), a());
        Figure demand = MemberChecks.share("", "share that both use up", "worst of 41 places along it", ratio);
        Figure capacity = MemberChecks.share("", "share there is", "", 1);
        return new Utilisation(
                "bending with push or pull", SPREAD, demand, capacity, ratio, may.factors(), List.of(along));
    }

    /** How far it sags, plumb: the level beam's value over the cosine. */
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
        Source usual = Limits.STRINGER_SAG.source();
        int part = Limits.STRINGER_SAG.part();
        return checks.deflection(
                "people over the whole flight",
                figure,
                mm,
                it.span(),
                part,
                wood.modulus(),
                MemberChecks.partOf(it.span(), part, usual));
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

    /** Where it stands: the whole reaction on its level cut. */
    Answer<Utilisation> standing() {
        if (!it.stands().isPositive()) {
            return Answer.unknown("nothing is left of the level cut at the foot to stand on");
        }
        Force reaction = reaction();
        Figure figure = MemberChecks.figure("R", "load on one foot", "w·L ÷ 2", units().show(reaction), w(), l());
        return Answer.known(checks.bearing(
                SPREAD, figure, reaction, it.board().breadth(), near(it.stands()), wood.bearing(it.stands())));
    }

    private static Length near(Length length) {
        return Units.near(length.approxMm());
    }

    /** Plumb, at each end. */
    Force reaction() {
        return beam.endReaction(spread);
    }

    LineLoad spread() {
        return spread;
    }

    /** The worst of all that ends a stringer; nothing when one of them cannot be told. */
    Answer<Double> worst() {
        return bending()
                .then(bent -> together().map(both -> {
                    double most = Math.max(bent.ratio(), Math.max(both.ratio(), shear().ratio()));
                    return Math.max(most, deflection().ratio());
                }));
    }

    private Figure.Input w() {
        return new Figure.Input("w", units().show(spread));
    }

    private Figure.Input l() {
        return new Figure.Input("L", it.span());
    }

    private Figure.Input a() {
        Pitch pitch = it.pitch();
        return new Figure.Input("a", pitch);
    }

    /** What the stringer takes of the flight, and what that makes along it. */
    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(MemberChecks.figure(
                "w",
                "load along the plan of it, as held against strength",
                basis.isEurocode() ? "(1.35·D + 1.5·Q)·s" : "(D + Q)·s",
                units().show(spread),
                new Figure.Input("D", units().show(basis.loads().dead().load())),
                new Figure.Input("Q", units().show(basis.loads().live().load())),
                new Figure.Input("s", it.takes())));
        figures.add(MemberChecks.figure("R", "load on each end of it", "w·L ÷ 2", units().show(reaction()), w(), l()));
        return figures;
    }
}
