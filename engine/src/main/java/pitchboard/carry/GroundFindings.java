package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.FootPad;
import pitchboard.brief.Support;
import pitchboard.carry.joints.Pad;
import pitchboard.carry.joints.Soil;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerReactions;
import pitchboard.measure.Area;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Ratio;
import pitchboard.parts.StringerSpacing;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.FootSurface;
import pitchboard.source.Confidence;
import pitchboard.source.Practice;
import pitchboard.stair.Stair;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** What the foot, and the posts of a support, press on the ground. Loads as they are, not raised. */
record GroundFindings(Stair stair, Basis basis, StringerCase it) {
    private static final Judging.Name BEARING = new Judging.Name(
            "pad-ground", "ground under the foot", "the ground under the foot bears {} of what it is presumed to");
    private static final Judging.Name POSTS = new Judging.Name(
            "support-ground", "ground under the posts", "the ground under a post bears {} of what it is presumed to");
    private static final Practice SLAB = new Practice("IRC R506.1, slabs on the ground", Confidence.FROM_MEMORY);
    private static final Practice FOOTING = new Practice("IRC R403.1.1, width of footings", Confidence.READ);
    private static final Length THINNEST = Length.inches(3, 1, 2);
    private static final Length NARROWEST = Length.inches(12);

    List<MemberFinding> findings() {
        if (stair.site().foot() == FootSurface.TIMBER_FLOOR) {
            return onFloor();
        }
        List<MemberFinding> findings = new ArrayList<>();
        findings.add(underFoot());
        said().size().ifPresent(size -> findings.addAll(sizes(size)));
        underPosts().ifPresent(findings::add);
        return findings;
    }

    private List<MemberFinding> onFloor() {
        List<MemberFinding> findings = new ArrayList<>();
        findings.add(open(
                BEARING,
                Phrase.of(
                        "the feet press on the floor with {} in all: see that its joists carry that",
                        basis.units().show(all()))));
        if (it.supported().isPresent()) {
            findings.add(open(
                    POSTS,
                    Phrase.of(
                            "each post presses on the floor with {}: see that its joists carry that",
                            basis.units().show(new StringerReactions(basis, it).support()))));
        }
        return findings;
    }

    private FootPad said() {
        return stair.brief().joints().pad();
    }

    private LineLoad wholeWidth() {
        Length width = stair.brief().width();
        return basis.loads().dead().load().plus(basis.loads().live().load()).across(width);
    }

    /** Of all the feet. */
    private Force all() {
        return new Force(wholeWidth().nPerMm() * it.footSpan().approxMm() / 2);
    }

    private Soil soil() {
        return said().soil().map(GroundFindings::soil).orElse(Soil.CLAY_OR_SILT);
    }

    private static Soil soil(FootPad.Soil said) {
        return switch (said) {
            case CLAY_OR_SILT -> Soil.CLAY_OR_SILT;
            case SAND -> Soil.SAND_OR_SILTY_GRAVEL;
            case GRAVEL -> Soil.GRAVEL;
            case SEDIMENTARY_ROCK -> Soil.SEDIMENTARY_ROCK;
            case CRYSTALLINE_ROCK -> Soil.CRYSTALLINE_ROCK;
        };
    }

    private MemberFinding underFoot() {
        if (basis.isEurocode()) {
            return open(
                    BEARING,
                    Phrase.of(
                            "the feet press on the ground with {} in all: Eurocode 7 asks for the ground's own values, so ask"
                                    + " the building office how large a pad must be",
                            basis.units().show(all())));
        }
        if (said().size().isEmpty()) {
            return open(
                    BEARING,
                    Phrase.of(
                            "nobody said how large the pad is: the feet press with {}, so on " + ground()
                                    + " at least {} of it must lie under them",
                            basis.units().show(all()),
                            needed(all())));
        }
        Pad counted = counted(said().size().get());
        return onSoil(
                BEARING,
                "use a larger or thicker pad under the foot",
                soil -> counted.bearing(all(), soil, basis.units()));
    }

    private MemberFinding onSoil(Judging.Name name, String remedy, Function<Soil, Utilisation> check) {
        return new Judging<>(
                        MemberFinding.Topic.GROUND,
                        soil(),
                        said().soil().isEmpty() ? Optional.of(Soil.GRAVEL) : Optional.empty(),
                        "gravel",
                        Place.FOOT,
                        Phrase.of(remedy),
                        Soil.SOURCE)
                .of(name, soil -> Answer.known(check.apply(soil)));
    }

    /** Only so much of a pad counts as lies within its thickness of the feet: plain concrete spreads no farther. */
    private Pad counted(FootPad.Size size) {
        Length spread = size.thickness().times(2);
        Length along = it.stands().isPositive() ? nearly(it.stands()) : Length.inches(1);
        Length across = StringerSpacing.of(stair.brief()).overall();
        return new Pad(
                Length.min(size.length(), along.plus(spread)),
                Length.min(size.width(), across.plus(spread)),
                size.thickness());
    }

    private static Length nearly(Length length) {
        return Units.near(length.approxMm());
    }

    private String ground() {
        return said().soil().isEmpty() ? "clay or silt, which carries least," : "this ground";
    }

    /** In whole inches square, so that nothing is lost by rounding. */
    private Area needed(Force load) {
        double inches = Pad.neededSquareFeet(load, soil()) * 144;
        return new Area(Ratio.of((long) Math.ceil(inches)));
    }

    private List<MemberFinding> sizes(FootPad.Size size) {
        Length narrow = Length.min(size.length(), size.width());
        return List.of(
                published(
                        "pad-thickness",
                        "thickness of the pad",
                        size.thickness(),
                        Limit.atLeast(THINNEST),
                        "a pad is at least {} thick",
                        SLAB),
                published(
                        "pad-width",
                        "narrow side of the pad",
                        narrow,
                        Limit.atLeast(NARROWEST),
                        "a pad is at least {} wide",
                        FOOTING));
    }

    private static MemberFinding published(
            String id, String subject, Length measured, Limit limit, String remedy, Practice source) {
        Phrase words = Phrase.of(remedy, limit.value());
        Verdict verdict = limit.judge(measured, Place.FOOT, () -> words);
        return new MemberFinding(id, MemberFinding.Topic.GROUND, subject, verdict, words, Optional.empty(), source);
    }

    /** Posts need footings of their own unless they stand on a floor that carries them. */
    private Optional<MemberFinding> underPosts() {
        if (it.supported().isEmpty()) {
            return Optional.empty();
        }
        Force load = new StringerReactions(basis, it).support();
        Optional<Length> footing = stair.brief().support().flatMap(Support::footing);
        if (basis.isEurocode()) {
            return Optional.of(open(
                    POSTS,
                    Phrase.of(
                            "each post presses with {}: ask the building office how large its footing must be",
                            basis.units().show(load))));
        }
        return Optional.of(footing.map(side -> footing(side, load))
                .orElseGet(() -> open(
                        POSTS,
                        Phrase.of(
                                "nobody said what the posts stand on: each presses with {}, so on " + ground()
                                        + " it needs a footing of at least {}, below frost",
                                basis.units().show(load),
                                needed(load)))));
    }

    private MemberFinding footing(Length side, Force load) {
        return onSoil(
                POSTS, "use larger footings under the posts", soil -> Pad.pressure(load, side, soil, basis.units()));
    }

    private MemberFinding open(Judging.Name name, Phrase words) {
        return new Fixed(MemberFinding.Topic.GROUND, basis, Place.FOOT).open(name, words);
    }
}
