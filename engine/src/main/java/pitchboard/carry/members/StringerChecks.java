package pitchboard.carry.members;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.source.Figure;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Moment;
import pitchboard.strength.Resistance;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.Stress;
import pitchboard.strength.TwoSpans;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/**
 * The checks of one stringer. Plumb loads on a sloping beam: the moment is that of a level beam over the plan, the
 * shear across the board is the reaction times the cosine, the push along it the reaction times the sine.
 */
public final class StringerChecks {
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
    private final StringerReactions reactions;

    public StringerChecks(Basis basis, StringerCase it, Material wood) {
        this.basis = basis;
        this.it = it;
        this.wood = wood;
        this.checks = basis.checks();
        this.beam = new SimpleBeam(it.span());
        this.spread = basis.loads().spread(it.takes());
        this.reactions = new StringerReactions(basis, it);
        this.slope = Units.near(it.span().approxMm() / it.cosine());
    }

    public Material wood() {
        return wood;
    }

    private Units units() {
        return basis.units();
    }

    /** {@code M = w·L² / 8}. */
    public Answer<Utilisation> bending() {
        Moment moment = beam.moment(spread);
        Figure figure =
                MemberChecks.figure("M", "bending moment at mid span", "w·L² ÷ 8", units().show(moment), w(), l());
        return wood.onEdge().map(may -> checks.bending(SPREAD, figure, moment, it.bends(), may));
    }

    /** Bending or shear under one load, whichever is worse. */
    public Answer<Utilisation> pointLoad() {
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

    /** {@code V = w·L / 2·cos a}; over a support as if it ran on, which asks more. */
    public Utilisation shear() {
        return it.supported().map(this::shearOverSupport).orElseGet(this::shearAtEnds);
    }

    private Utilisation shearOverSupport(TwoSpans spans) {
        Force across = spans.shear(spread).times(it.cosine());
        Figure figure = MemberChecks.figure(
                "V",
                "shear across the board beside the support, were it to run on over it",
                "(w·L ÷ 2 + M ÷ L)·cos a",
                units().show(across),
                w(),
                l(),
                new Figure.Input("M", units().show(spans.overSupport(spread))),
                a());
        return checks.shear(SPREAD, figure, across, it.bends(), wood.shear());
    }

    private Utilisation shearAtEnds() {
        Force across = beam.endReaction(spread).times(it.cosine());
        Figure figure = MemberChecks.figure(
                "V", "shear across the board at its ends", "w·L ÷ 2·cos a", units().show(across), w(), l(), a());
        return checks.shear(SPREAD, figure, across, it.bends(), wood.shear());
    }

    /** Bending with the push or pull along the board, at the worst of many places. */
    public Answer<Utilisation> together() {
        return wood.interaction(it.bends(), slope, it.step())
                .then(this::worstPlace)
                .then(ratio -> wood.onEdge().map(may -> together(ratio, may)));
    }

    private Answer<Double> worstPlace(Interaction interaction) {
        double ends =
                beam.endReaction(spread).newtons() * it.sine() / it.bends().areaMm2();
        Answer<Double> worst = Answer.known(0.0);
        for (int i = 0; i <= PLACES; i++) {
            double share = i / (double) PLACES;
            Stress bend = MemberChecks.bending(beam.momentAt(spread, share), it.bends());
            double along = ends * (1 - 2 * share);
            Answer<Double> here = along >= 0
                    ? interaction.pressed(new Stress(along), bend)
                    : Answer.known(interaction.pulled(new Stress(-along), bend));
            worst = worst.then(soFar -> here.map(ratio -> Math.max(soFar, ratio)));
        }
        return worst;
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
    public Utilisation deflection() {
        return new StringerSag(basis, it, wood).deflection();
    }

    /** Where it stands: the whole reaction on its level cut. */
    public Answer<Utilisation> standing() {
        if (!it.stands().isPositive()) {
            return Answer.unknown("nothing is left of the level cut at the foot to stand on");
        }
        Force reaction = footReaction();
        Figure figure = MemberChecks.figure(
                "R", "load on one foot", "w·L ÷ 2", units().show(reaction), w(), new Figure.Input("L", it.footSpan()));
        return Answer.known(checks.bearing(
                SPREAD, figure, reaction, it.board().breadth(), near(it.stands()), wood.bearing(it.stands())));
    }

    private static Length near(Length length) {
        return Units.near(length.approxMm());
    }

    /** Plumb, at the foot. */
    public Force footReaction() {
        return reactions.foot();
    }

    /** Plumb, at the head. */
    public Force headReaction() {
        return reactions.head();
    }

    public LineLoad spread() {
        return spread;
    }

    /** The worst of all that ends a stringer; nothing when one of them cannot be told. */
    public Answer<Double> worst() {
        double always = Math.max(shear().ratio(), deflection().ratio());
        return bending()
                .then(bent -> together()
                        .then(both -> asked().map(asked ->
                                Math.max(Math.max(always, asked), Math.max(bent.ratio(), both.ratio())))));
    }

    /** One load on one stringer counts where the standard asks for it. */
    private Answer<Double> asked() {
        return basis.isEurocode() ? pointLoad().map(Utilisation::ratio) : Answer.known(0.0);
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

    /** What the stringer takes of the flight, and what that makes at its ends. */
    public List<Figure> figures() {
        return reactions.figures();
    }
}
