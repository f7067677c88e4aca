package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Support;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.Material;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerReactions;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.parts.SupportPost;
import pitchboard.rules.Place;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.stair.Stair;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Resistance;
import pitchboard.strength.Stress;
import pitchboard.strength.TwoSpans;
import pitchboard.strength.Utilisation;

/** The post under a stringer: pressed along its grain, and pressing on the stringer across its grain. */
record SupportFindings(Stair stair, Basis basis, StringerCase it) {
    private static final Judging.Name POST = new Judging.Name(
            "support-post", "post under a stringer", "each post under a stringer carries {} of what it may");
    private static final Judging.Name ON_POST = new Judging.Name(
            "support-bearing", "a stringer on its post", "a stringer presses {} of what it may on its post");
    private static final Judging.Name LIFT = new Judging.Name("support-lift", "the short end beyond the support", "");

    List<MemberFinding> findings() {
        if (it.supported().isEmpty() || stair.brief().support().isEmpty()) {
            return List.of();
        }
        Support support = stair.brief().support().get();
        List<MemberFinding> findings = new ArrayList<>();
        findings.add(post(support));
        findings.add(onPost(support));
        lift(it.supported().get()).ifPresent(findings::add);
        return findings;
    }

    private Force load() {
        return new StringerReactions(basis, it).support();
    }

    private Figure figure() {
        return MemberChecks.figure(
                "Rs",
                "load on one post",
                "w·(L1 + L2) ÷ 2 + M ÷ L1 + M ÷ L2",
                basis.units().show(load()));
    }

    private MemberFinding post(Support support) {
        Answer<Material> wood = basis.woods().post(support.thickness(), support.width());
        Place where = Place.named("under the stringers");
        Phrase remedy = Phrase.of("use thicker posts under the stringers");
        return wood.match(
                known -> new Judging<>(
                                MemberFinding.Topic.SUPPORT,
                                known,
                                basis.woods().findBestPost(support.thickness(), support.width()),
                                basis.woods().bestName(),
                                where,
                                remedy,
                                known.source())
                        .of(POST, each -> pressed(support, each)),
                because -> open(POST, Phrase.of("it cannot be told: " + because)));
    }

    private Answer<Utilisation> pressed(Support support, Material wood) {
        Length free = SupportPost.height(stair, support);
        if (!free.isPositive()) {
            return Answer.unknown(
                    "nothing is between the stringer and what lies below it; move the support up the flight");
        }
        return wood.asPost(free).map(may -> pressed(support, free, may));
    }

    private Utilisation pressed(Support support, Length free, Resistance may) {
        double area = support.width().approxMm() * support.thickness().approxMm();
        Stress pressure = new Stress(load().newtons() / area);
        Figure demand = MemberChecks.figure(
                "fc",
                "pressure along the post",
                "Rs ÷ (b·d)",
                basis.units().show(pressure),
                figure().asInput(),
                new Figure.Input("b", support.thickness()),
                new Figure.Input("d", support.width()));
        return new Utilisation(
                "pressure along the grain",
                HeadFindings.PEOPLE,
                demand,
                may.figure(basis.units()),
                pressure.over(may.value()),
                may.factors(),
                List.of(figure(), Figure.given("l", "free length of the post", free, Practice.GEOMETRY)));
    }

    private MemberFinding onPost(Support support) {
        Length shared = Length.min(support.thickness(), it.board().breadth());
        return basis.woods()
                .stringer(it.board().breadth(), it.board().depth())
                .match(
                        wood -> new Judging<>(
                                        MemberFinding.Topic.SUPPORT,
                                        wood,
                                        basis.woods()
                                                .findBestStringer(
                                                        it.board().breadth(),
                                                        it.board().depth()),
                                        basis.woods().bestName(),
                                        Place.named("under the stringers"),
                                        Phrase.of("use wider posts under the stringers"),
                                        wood.source())
                                .of(
                                        ON_POST,
                                        each -> Answer.known(basis.checks()
                                                .bearing(
                                                        HeadFindings.PEOPLE,
                                                        figure(),
                                                        load(),
                                                        shared,
                                                        support.width(),
                                                        each.bearing(support.width())))),
                        because -> open(ON_POST, Phrase.of("it cannot be told: " + because)));
    }

    /** Where the other span is much longer the short end would rise. */
    private Optional<MemberFinding> lift(TwoSpans spans) {
        double least = Math.min(
                spans.atFirstEnd(basis.loads().spread(it.takes())).newtons(),
                spans.atSecondEnd(basis.loads().spread(it.takes())).newtons());
        return least >= 0
                ? Optional.empty()
                : Optional.of(open(
                        LIFT,
                        Phrase.of(
                                "the short end rises with {}, were the stringers to run on over the support: hold it down for"
                                        + " that, or move the support nearer the middle",
                                basis.units().show(new Force(-least)))));
    }

    private MemberFinding open(Judging.Name name, Phrase words) {
        return new Fixed(MemberFinding.Topic.SUPPORT, basis, Place.WHOLE_FLIGHT).open(name, words);
    }
}
