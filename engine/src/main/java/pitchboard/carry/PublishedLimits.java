package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.carry.members.Basis;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.parts.StringerSpacing;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/**
 * The sizes a deck guide prints for stringers, as a word beside the reckoning. They rest on 40 lb/ft² of people and 10
 * of weight, stringers no more than 18 in apart, the weakest species of the guide, and no load at one place.
 */
record PublishedLimits(Stair stair, Basis basis) {
    private static final Clause FIGURES = Basis.DECK_GUIDE.read("figures 27 to 30");
    static final Length CUT_REACH = Length.feet(6);
    static final Length SOLID_REACH = Length.inches(159);
    private static final double MOST_LIVE_PSF = 40.001;
    private static final double MOST_DEAD_PSF = 10.001;
    private static final String RESTS_ON = "; it rests on 40 lb/ft² of people and 10 of weight, stringers at most 18 in"
            + " apart and the weakest species listed";

    List<MemberFinding> findings() {
        if (basis.isEurocode()) {
            return List.of();
        }
        if (stair.site().setting() == Site.Setting.INDOORS) {
            return List.of(finding(
                    "reach",
                    "published reach of cut stringers",
                    Verdict.doesNotApply("the guide is for decks, and the stair is indoors"),
                    Phrase.of("the deck guide's limits are for stairs outdoors")));
        }
        if (heavier()) {
            return List.of(finding(
                    "reach",
                    "published reach of cut stringers",
                    Verdict.doesNotApply("the guide prints it for 40 lb/ft² of people and 10 of weight at most"),
                    Phrase.of("the deck guide's limits are for lighter loads")));
        }
        StringerSpacing across = StringerSpacing.of(stair.brief());
        List<MemberFinding> findings = new ArrayList<>(stringers(across));
        findings.addAll(boards());
        thinTreads(across).ifPresent(findings::add);
        return findings;
    }

    /** How far cut stringers reach, how far apart they stand, and how many there are. */
    private List<MemberFinding> stringers(StringerSpacing across) {
        return List.of(
                judged(
                        "reach",
                        "level reach of a cut stringer",
                        reach(),
                        Limit.atMost(CUT_REACH),
                        "the deck guide lets a cut stringer reach {} level",
                        "support the stringers midway, use solid ones (to {}), or have the reckoning accepted"
                                + RESTS_ON,
                        SOLID_REACH),
                judged(
                        "spacing",
                        "stringers, middle to middle",
                        across.spacing(),
                        Limit.atMost(Length.inches(18)),
                        "the deck guide lets cut stringers stand {} apart",
                        "add a stringer"),
                judged(
                        "count",
                        "number of cut stringers",
                        new Count(stair.brief().stringers().count()),
                        Limit.atLeast(new Count(3)),
                        "the deck guide asks for {} cut stringers",
                        "add a stringer"));
    }

    /** From support to support. */
    private Length reach() {
        Length whole = stair.flight().totalRun();
        return stair.brief()
                .support()
                .map(support -> Length.max(support.at(), whole.minus(support.at())))
                .orElse(whole);
    }

    /** How deep their boards are, and what the cuts leave of them. */
    private List<MemberFinding> boards() {
        StringerShape shape = new StringerShape(stair);
        return List.of(
                judged(
                        "throat",
                        "wood left under a step",
                        shape.throat(),
                        Limit.atLeast(Length.inches(5)),
                        "the deck guide asks for {} of wood under a step",
                        "cut the stringers from deeper boards"),
                judged(
                        "depth",
                        "depth of the stringers' board",
                        shape.boardDepth(),
                        Limit.atLeast(Length.inches(11, 1, 4)),
                        "the deck guide cuts stringers from boards {} deep",
                        "cut the stringers from deeper boards"));
    }

    /** No table has values for boards as thin as decking, so the guide's own word is all there is. */
    private Optional<MemberFinding> thinTreads(StringerSpacing across) {
        Length thickness = stair.brief().treads().thickness();
        if (thickness.isAtLeast(Length.inches(1, 1, 2))) {
            return Optional.empty();
        }
        Verdict verdict = thickness.isLessThan(Length.inches(1))
                ? Limit.atLeast(Length.inches(1))
                        .judge(thickness, Place.EVERY_STEP, () -> Phrase.of("use thicker tread boards"))
                : Limit.atMost(Length.inches(18))
                        .judge(across.spacing(), Place.EVERY_STEP, () -> Phrase.of("add a stringer"));
        return Optional.of(new MemberFinding(
                "published-thin-treads",
                MemberFinding.Topic.PUBLISHED,
                "thin tread boards on cut stringers",
                verdict,
                Phrase.of(
                        "the deck guide lays boards {} thick on cut stringers at most {} apart",
                        Length.inches(1),
                        Length.inches(18)),
                Optional.empty(),
                Basis.DECK_GUIDE.memory("tread sizes")));
    }

    private boolean heavier() {
        return basis.loads().live().load().psf() > MOST_LIVE_PSF
                || basis.loads().dead().load().psf() > MOST_DEAD_PSF;
    }

    private static MemberFinding judged(
            String id,
            String subject,
            Quantity measured,
            Limit limit,
            String words,
            String remedy,
            Quantity... inRemedy) {
        Verdict verdict = limit.judge(measured, Place.WHOLE_FLIGHT, () -> Phrase.of(remedy, inRemedy));
        return finding(id, subject, verdict, Phrase.of(words, limit.value()));
    }

    private static MemberFinding finding(String id, String subject, Verdict verdict, Phrase words) {
        return new MemberFinding(
                "published-" + id, MemberFinding.Topic.PUBLISHED, subject, verdict, words, Optional.empty(), FIGURES);
    }
}
