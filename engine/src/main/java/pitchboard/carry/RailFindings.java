package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.Handrail;
import pitchboard.brief.Infill;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.Material;
import pitchboard.carry.members.RailLoads;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.railing.Bay;
import pitchboard.railing.Brackets;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.rules.Place;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Moment;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** Rails between posts, what closes the bays, and the handrail on its brackets. */
record RailFindings(Stair stair, Basis basis, RailLoads loads) {
    private static final Place WHERE = Place.named("the guard");
    private static final Length FOOT = Length.inches(12);
    private static final Judging.Name RAIL = new Judging.Name(
            "guard-rail", "bending of the top rail", "the top rail of the guard carries {} of what it may in bending");
    private static final Judging.Name ENDS = new Judging.Name("guard-rail-ends", "ends of the top rail", "");
    private static final Judging.Name INFILL = new Judging.Name(
            "guard-infill",
            "bending of the guard's infill",
            "the infill of the guard carries {} of what it may in bending");
    private static final Judging.Name BRACKET = new Judging.Name(
            "handrail-bracket", "bracket of the handrail", "a bracket of the handrail carries {} of what it may");

    List<MemberFinding> findings() {
        List<MemberFinding> findings = new ArrayList<>();
        GuardLayout.find(stair).filter(layout -> !layout.bays().isEmpty()).ifPresent(layout -> {
            findings.add(topRail(layout));
            findings.add(open(
                    ENDS,
                    Phrase.of(
                            "each end of the top rail must be held to its post for {}, any way",
                            shown(loads.onPost(layout.places().widest())))));
            infill(layout).ifPresent(findings::add);
        });
        bracket().ifPresent(findings::add);
        return findings;
    }

    private Quantity shown(Force force) {
        return basis.units().show(force);
    }

    private MemberFinding open(Judging.Name name, Phrase words) {
        return new Fixed(MemberFinding.Topic.GUARD, basis, WHERE).open(name, words);
    }

    /** Level, over the clear length along the slope; or down, over the clear length level. */
    private MemberFinding topRail(GuardLayout layout) {
        Length level =
                layout.bays().stream().map(Bay::clear).reduce(Length::max).orElseThrow();
        Length slope = Units.near(stair.pitch().alongForLevel(level).approxMm());
        Length thickness = layout.build().topRail().thickness();
        Length width = layout.build().topRail().width();
        return judged(
                RAIL,
                thickness,
                width,
                Phrase.of("use a stronger top rail, or set the posts closer"),
                wood -> either(
                        bent("level, at mid span", slope, new Section(thickness, width), wood),
                        bent("down, at mid span", level, new Section(width, thickness), wood)));
    }

    private static Answer<Utilisation> either(Answer<Utilisation> one, Answer<Utilisation> other) {
        return one.then(first -> other.map(second -> first.ratio() >= second.ratio() ? first : second));
    }

    private Answer<Utilisation> bent(String way, Length span, Section section, Material wood) {
        SimpleBeam beam = new SimpleBeam(span);
        LineLoad line = loads.along().map(load -> load.load()).orElse(LineLoad.NONE);
        Moment spread = beam.moment(line);
        Moment one = beam.moment(loads.point().load());
        boolean pointGoverns = one.nMm() >= spread.nMm();
        Moment moment = pointGoverns ? one : spread;
        Figure figure = MemberChecks.figure(
                "M",
                "bending moment, " + way,
                pointGoverns ? "Pr·L ÷ 4" : "qr·L² ÷ 8",
                basis.units().show(moment),
                new Figure.Input("L", span));
        String governing = "the load on the rail, " + way;
        return along(wood, section, span).map(may -> basis.checks().bending(governing, figure, moment, section, may));
    }

    private static Answer<Resistance> along(Material wood, Section section, Length span) {
        return section.depth().isMoreThan(section.breadth()) ? wood.onEdgeHeldEvery(span) : wood.onFlat();
    }

    private MemberFinding judged(
            Judging.Name name,
            Length thickness,
            Length width,
            Phrase remedy,
            Function<Material, Answer<Utilisation>> check) {
        return basis.woods()
                .post(thickness, width)
                .match(
                        wood -> new Judging<>(
                                        MemberFinding.Topic.GUARD,
                                        wood,
                                        basis.woods().findBestPost(thickness, width),
                                        basis.woods().bestName(),
                                        WHERE,
                                        remedy,
                                        wood.source())
                                .of(name, check),
                        because -> open(name, Phrase.of("it cannot be told: " + because)));
    }

    private Optional<MemberFinding> infill(GuardLayout layout) {
        return loads.infill().map(load -> {
            if (layout.build().infill() instanceof Infill.Balusters balusters) {
                return pieces(
                        layout,
                        load.load(),
                        balusters.section().thickness(),
                        balusters.section().width());
            }
            if (layout.build().infill() instanceof Infill.Boards boards) {
                return pieces(
                        layout,
                        load.load(),
                        boards.section().thickness(),
                        boards.section().width());
            }
            return open(
                    INFILL,
                    Phrase.of(
                            "sheets go by what their maker states: they and their fixing must hold {} level on one square foot",
                            shown(load.load())));
        });
    }

    /** What of a square foot is one piece's, at the middle of its length. */
    private MemberFinding pieces(GuardLayout layout, Force load, Length thickness, Length width) {
        Length apart = Length.ZERO;
        Length span = Length.ZERO;
        for (Filling filling : layout.fillings()) {
            apart = Length.max(apart, filling.opening().plus(width));
            span = Length.max(span, length(filling));
        }
        double share = Math.min(1, apart.approxMm() / FOOT.approxMm());
        Force one = load.times(share);
        Length between = Units.near(span.approxMm());
        Section section = new Section(width, thickness);
        Moment moment = new SimpleBeam(between).moment(one);
        Figure figure = MemberChecks.figure(
                "M",
                "bending moment, at the middle of one piece",
                "Pi·c ÷ f·L ÷ 4",
                basis.units().show(moment),
                new Figure.Input("Pi", shown(load)),
                new Figure.Input("c", Units.near(apart.approxMm())),
                new Figure.Input("f", FOOT),
                new Figure.Input("L", between));
        return judged(
                INFILL,
                thickness,
                width,
                Phrase.of("use thicker infill, or set the pieces closer"),
                wood -> along(wood, section, between)
                        .map(may -> basis.checks()
                                .bending("the load on one square foot of infill", figure, moment, section, may)));
    }

    private static Length length(Filling filling) {
        if (filling instanceof Filling.Balusters balusters) {
            return balusters.length();
        }
        return filling instanceof Filling.Boards boards ? boards.length() : Length.ZERO;
    }

    /** On a wall; on an open side the guard carries the rail. */
    private Optional<MemberFinding> bracket() {
        if (stair.brief().handrail().sides() == Handrail.Sides.NONE
                || Brackets.find(stair).isEmpty()) {
            return Optional.empty();
        }
        Force force = loads.onPost(Brackets.find(stair).get().apart());
        Figure figure = Figure.given(
                "Pr",
                "on one bracket of the rail, any way",
                shown(force),
                loads.point().source());
        Fixed fixed = new Fixed(MemberFinding.Topic.GUARD, basis, Place.named("the handrail"));
        return Optional.of(fixed.rated(
                BRACKET,
                stair.brief().joints().bracket(),
                Asked.across("the load on the handrail, beside a bracket", figure, force),
                "each bracket of the handrail, and what it is screwed to, must hold {} any way; say what yours may"));
    }
}
