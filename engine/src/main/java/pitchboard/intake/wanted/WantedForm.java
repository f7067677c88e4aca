package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Handrail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Joints;
import pitchboard.brief.Nosing;
import pitchboard.brief.Risers;
import pitchboard.brief.Strength;
import pitchboard.brief.Stringers;
import pitchboard.brief.Support;
import pitchboard.brief.TreadMakeUp;
import pitchboard.brief.Wishes;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** Everything that is wanted. */
public final class WantedForm extends GroupForm<Wanted> {
    private static final Key<HeadJoin> HEAD = Key.needed(
            "head",
            ChoiceForm.of("one down", HeadJoin.ONE_DOWN).or("flush", HeadJoin.FLUSH),
            "one down: the floor is the last step; flush: the top tread is level with the floor");
    private static final Key<HeadFixing> HEAD_FIXING =
            Key.needed("head fixing", new HeadFixingForm(), "how the head of each stringer is held to the header");
    private static final Key<FootDetail> FOOT =
            Key.needed("foot", new FootForm(), "how the foot of each stringer stands");
    private static final Key<Length> WIDTH =
            Key.needed("width", Bounds.FLIGHT_WIDTH, "of the flight: the length of the treads");
    private static final Key<Optional<Length>> CLEAR_WIDTH = Key.open(
            "clear width",
            Bounds.FLIGHT_WIDTH,
            "between whatever stands beside the walking space, above the handrail",
            "the width itself");
    private static final Key<TreadMakeUp> TREADS = Key.needed("treads", new TreadForm(), "the boards of a tread");
    private static final Key<Risers> RISERS = Key.needed("risers", new RiserForm(), "whether the steps are closed");
    private static final Key<Optional<Nosing>> NOSING = Key.open(
            "nosing", new NosingForm(), "how the front edge of every tread is finished", "undecided: the rules ask");
    private static final Key<Stringers> STRINGERS =
            Key.needed("stringers", new StringerForm(), "what carries the treads");
    private static final Key<Handrail> HANDRAIL =
            Key.needed("handrail", new HandrailForm(), "which handrails are wanted");
    private static final Key<Guard> GUARD = Key.needed("guard", new GuardForm(), "the guard on the open sides");
    private static final Key<Wishes> STEPS = Key.defaulting(
            "steps",
            new WishForm(),
            "what is fixed about the steps, and what would be liked best",
            "the program chooses freely",
            units -> Wishes.NONE);
    private static final Key<Brief.Use> USE = Key.defaulting(
            "use",
            ChoiceForm.of("dwelling", Brief.Use.DWELLING)
                    .or("storage or crawl space", Brief.Use.STORAGE_OR_CRAWL_SPACE)
                    .or("free standing", Brief.Use.FREE_STANDING),
            "what the flight leads to: rooms; an attic nobody lives in or a crawl space; or it stands on the ground"
                    + " apart from any building",
            "dwelling",
            units -> Brief.Use.DWELLING);
    private static final Key<Optional<Support>> SUPPORT =
            Key.open("support", new SupportForm(), "a post under every stringer, between foot and head", "none");
    private static final Key<Joints> JOINTS = Key.defaulting(
            "joints",
            new JointsForm(),
            "what holds the stair together; every line may be left out",
            "the papers say what each joint must hold",
            units -> Joints.UNSAID);
    private static final Key<Strength> STRENGTH = Key.defaulting(
            "strength",
            new StrengthForm(),
            "what the strength is reckoned with; every line may be left out",
            "assumed, and the papers say so",
            Strength::assumed);

    @Override
    public List<Key<?>> keys() {
        return List.of(
                HEAD,
                HEAD_FIXING,
                FOOT,
                WIDTH,
                CLEAR_WIDTH,
                TREADS,
                RISERS,
                NOSING,
                STRINGERS,
                HANDRAIL,
                GUARD,
                STEPS,
                USE,
                SUPPORT,
                JOINTS,
                STRENGTH);
    }

    @Override
    protected Wanted read(Fields in) {
        Wanted wanted = new Wanted(
                in.get(HEAD),
                in.get(HEAD_FIXING),
                in.get(FOOT),
                in.get(WIDTH),
                in.get(CLEAR_WIDTH),
                in.get(TREADS),
                in.get(RISERS),
                in.get(NOSING),
                in.get(STRINGERS),
                in.get(HANDRAIL),
                in.get(GUARD),
                in.get(STEPS),
                in.get(USE),
                in.get(SUPPORT),
                in.get(JOINTS),
                in.get(STRENGTH));
        check(wanted, in);
        return wanted;
    }

    private static void check(Wanted wanted, Fields in) {
        boolean floorAlone = wanted.wishes().risers().equals(Optional.of(1)) && wanted.headJoin() == HeadJoin.ONE_DOWN;
        if (floorAlone && in.areSound(HEAD, STEPS)) {
            in.refuse(STEPS, "two risers or more where the floor is the last step");
        }
        Stringers stringers = wanted.stringers();
        Length taken = stringers
                .stock()
                .thickness()
                .times(stringers.count())
                .plus(stringers.treadOverhang().times(2));
        if (taken.isMoreThan(wanted.width()) && in.areSound(WIDTH, STRINGERS)) {
            in.refuse(STRINGERS, "stringers that fit side by side under the treads, tread overhangs included");
        }
        boolean postsMiss = wanted.guard().build().map(GuardBuild::posts).stream()
                .flatMap(posts -> posts.behindNosing().map(posts.section().width()::plus).stream())
                .anyMatch(wanted.treads().width()::isLessThan);
        if (postsMiss && in.areSound(TREADS, GUARD)) {
            in.refuse(GUARD, "posts that stand no farther behind the nosing than the tread is wide");
        }
    }

    @Override
    protected void write(Wanted value, Lines out) {
        out.put(HEAD, value.headJoin());
        out.put(HEAD_FIXING, value.headFixing());
        out.put(FOOT, value.foot());
        out.put(WIDTH, value.width());
        out.put(CLEAR_WIDTH, value.clearWidth());
        out.put(TREADS, value.treads());
        out.put(RISERS, value.risers());
        out.put(NOSING, value.nosing());
        out.put(STRINGERS, value.stringers());
        out.put(HANDRAIL, value.handrail());
        out.put(GUARD, value.guard());
        out.put(STEPS, value.wishes());
        out.put(USE, value.use());
        out.put(SUPPORT, value.support());
        out.put(JOINTS, value.joints());
        out.put(STRENGTH, value.strength());
    }
}
