package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.Joints;
import pitchboard.carry.fixings.FixingChecks;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.carry.fixings.Joint;
import pitchboard.carry.joints.GuardPost;
import pitchboard.carry.joints.GuardPostChecks;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.JointWoods;
import pitchboard.carry.members.Material;
import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.rules.Place;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Moment;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Pulled;

/** The posts of a laid-out guard: pushed outward and inward, along the flight, and down. */
final class GuardFindings {
    private static final String PUSH = "the push at the rail";
    private static final Place WHERE = Place.named("the posts of the guard");
    private static final Judging.Name BENDING = new Judging.Name(
            "guard-post-bending", "bending of a guard post", "a guard post carries {} of what it may in bending");
    private static final Judging.Name HOLD_DOWN = new Judging.Name(
            "guard-post-hold-down",
            "hold-down of a guard post",
            "the hold-down of a guard post carries {} of what it may");
    private static final Judging.Name DOWN = new Judging.Name(
            "guard-post-down",
            "a guard post pushed down",
            "pushed down, the bolts of a guard post carry {} of what they may");
    private static final Judging.Name ALONG = new Judging.Name(
            "guard-post-along",
            "guard posts pushed along the flight",
            "pushed along the flight, the upper bolt of a guard post carries {} of what it may");
    private static final String UNASKED =
            "pushed along the flight, the upper bolts alone would carry {} of what they may;"
                    + " rails and a post that is fixed to something solid help, which is not reckoned: let an engineer say";

    private final Stair stair;
    private final Basis basis;
    private final GuardCase it;
    private final Fixed fixed;

    GuardFindings(Stair stair, Basis basis, GuardCase it) {
        this.stair = stair;
        this.basis = basis;
        this.it = it;
        this.fixed = new Fixed(MemberFinding.Topic.GUARD, basis, WHERE);
    }

    private Joints said() {
        return stair.brief().joints();
    }

    List<MemberFinding> findings() {
        if (it.isSetOn()) {
            return List.of(fixed.open(
                    HOLD_DOWN,
                    Phrase.of(
                            "a post that stands on a tread needs a base that holds {} against tipping: no screws through its"
                                    + " foot do, so say which metal base, or let the posts lap the stringer",
                            basis.units()
                                    .show(new Moment(
                                            it.push().newtons() * it.standing().approxMm())))));
        }
        return it.worst().match(this::levers, because -> List.of(fixed.open(HOLD_DOWN, Phrase.of(because))));
    }

    private List<MemberFinding> levers(GuardPost post) {
        List<MemberFinding> findings = new ArrayList<>();
        findings.add(bending(post));
        findings.add(holdDown(post));
        if (it.loads().point().load().isPositive()) {
            findings.add(down());
        }
        findings.add(along(post));
        return findings;
    }

    private MemberFinding bending(GuardPost post) {
        Section section = post.post();
        Function<Material, Answer<Utilisation>> check =
                wood -> resistance(wood, post, section).map(may -> GuardPostChecks.bending(post, may, basis.units()));
        return basis.woods()
                .post(it.thickness(), it.width())
                .match(
                        wood -> new Judging<>(
                                        MemberFinding.Topic.GUARD,
                                        wood,
                                        basis.woods().findBestPost(it.thickness(), it.width()),
                                        basis.woods().bestName(),
                                        WHERE,
                                        Phrase.of("use thicker posts, or stronger wood for them"),
                                        wood.source())
                                .of(BENDING, check),
                        because -> fixed.open(BENDING, Phrase.of("it cannot be told: " + because)));
    }

    private static Answer<Resistance> resistance(Material wood, GuardPost post, Section section) {
        return section.depth().isAtLeast(section.breadth()) ? wood.onEdgeHeldEvery(post.lever()) : wood.onFlat();
    }

    private MemberFinding holdDown(GuardPost post) {
        return post.couple()
                .match(
                        couple -> said().holdDown()
                                .map(allowed -> judged(post, FixingChecks.force(allowed)))
                                .orElseGet(() -> fixed.open(
                                        HOLD_DOWN,
                                        Phrase.of(
                                                "the upper bolt of a post is pulled with {} outward, the lower one with {} inward:"
                                                        + " say which hold-down ties each post back and what it may hold; deck"
                                                        + " guides ask {}",
                                                basis.units().show(couple.pull()),
                                                basis.units().show(couple.thrust()),
                                                basis.units().show(GuardPostChecks.GUIDE_HOLD_DOWN)))),
                        because -> fixed.open(HOLD_DOWN, Phrase.of(because)));
    }

    private MemberFinding judged(GuardPost post, Force allowed) {
        return new Judging<>(
                        MemberFinding.Topic.GUARD,
                        allowed,
                        Optional.empty(),
                        "",
                        WHERE,
                        Phrase.of("use a stronger hold-down, or a deeper stringer that sets the bolts farther apart"),
                        HeadFindings.STATED)
                .of(HOLD_DOWN, each -> GuardPostChecks.holdDown(post, each, basis.units()));
    }

    private Joint bolted(JointWoods woods) {
        return new Joint(
                woods.posts(),
                it.thicknessLeft(),
                Pulled.Grain.SIDE,
                woods.stringers(),
                stair.brief().stringers().stock().thickness(),
                Optional.empty(),
                woods.wetness());
    }

    private boolean assumed() {
        return basis.woods().postsAreAssumed() || basis.woods().stringersAreAssumed();
    }

    private MemberFinding down() {
        Force push = it.loads().point().load();
        Figure figure = MemberChecks.figure(
                "P", "push down on one post", "", basis.units().show(push));
        return fixed.across(new Fixed.Case(
                DOWN,
                said().posts(),
                this::bolted,
                Asked.across(PUSH, figure, push),
                "nobody said which bolts hold the posts: pushed down, those of one post must hold {}",
                assumed()));
    }

    /** Rails join the posts, so all of them share the push along the flight. */
    private MemberFinding along(GuardPost post) {
        if (!it.isHandrail()) {
            return fixed.none(
                    ALONG,
                    "the top of the guard is no handrail, so the push along it may be left out",
                    Phrase.of("no push along the flight is asked for"));
        }
        return post.couple()
                .match(
                        couple -> shared(couple.pull().times(1.0 / it.count())),
                        because -> fixed.open(ALONG, Phrase.of(because)));
    }

    private MemberFinding shared(Force pull) {
        Figure figure = MemberChecks.figure(
                "T",
                "on the upper bolt of one post, the push shared by all",
                "P·(h + a) ÷ (a·n)",
                basis.units().show(pull),
                new Figure.Input("P", basis.units().show(it.push())),
                new Figure.Input("n", new Count(it.count())));
        MemberFinding found = fixed.across(new Fixed.Case(
                ALONG,
                said().posts().map(NosingFindings::one),
                this::bolted,
                Asked.across("the push along the rail, shared by the posts", figure, pull),
                "nobody said which bolts hold the posts: pushed along the flight, the upper one of each must hold {}",
                assumed()));
        return found.isFailure() ? fixed.unasked(found, UNASKED) : found;
    }
}
