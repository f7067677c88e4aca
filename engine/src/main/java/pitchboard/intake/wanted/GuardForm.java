package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.brief.Section;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The guard on the open sides. */
final class GuardForm extends GroupForm<Guard> {
    private static final String ASKED = "undecided: the rules ask for it";
    private static final String TOGETHER = "the guard is not laid out; posts, both rails and infill go together";
    private static final String LAID_OUT = "where the guard is laid out";

    private static final Key<Boolean> WANTED =
            Key.needed("wanted", Forms.yesOrNo(), "whether the open sides get a guard");
    private static final Key<Optional<Length>> HEIGHT =
            Key.open("height", Bounds.GUARD_HEIGHT, "its top, plumb above the line of the nosings", ASKED);
    private static final Key<Optional<Length>> GAP = Key.open(
            "gap",
            Bounds.GUARD_GAP,
            "the widest opening between its parts",
            "as it is laid out; else undecided, and the rules ask for it");
    private static final Key<Optional<Length>> TRIANGLE = Key.open(
            "triangle",
            Bounds.GUARD_GAP,
            "the widest ball that passes between tread, riser and the rail above them",
            "as it is laid out; else undecided, and the rules ask for it");
    private static final Key<Optional<Posts>> POSTS =
            Key.open("posts", new PostsForm(), "what holds the guard up", TOGETHER);
    private static final Key<Optional<Section>> TOP_RAIL =
            Key.open("top rail", new RailSectionForm(), "the rail on top, whose upper edge is the height", TOGETHER);
    private static final Key<Optional<GuardBuild.BottomRail>> BOTTOM_RAIL =
            Key.open("bottom rail", new BottomRailForm(), "the rail under the infill", TOGETHER);
    private static final Key<Optional<Infill>> INFILL =
            Key.open("infill", new InfillForm(), "what closes the guard between posts and rails", TOGETHER);

    private static final Key<Optional<EdgeGuard>> EDGE = Key.open(
            "along the edge above",
            new EdgeGuardForm(),
            "the guard along the open edge of the upper floor, built like that of the flight",
            "none is wanted there");

    @Override
    public List<Key<?>> keys() {
        return List.of(WANTED, HEIGHT, GAP, TRIANGLE, POSTS, TOP_RAIL, BOTTOM_RAIL, INFILL, EDGE);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(WANTED);
    }

    @Override
    protected Guard read(Fields in) {
        boolean wanted = in.get(WANTED);
        Optional<Length> gap = in.get(GAP);
        Optional<Length> triangle = in.get(TRIANGLE);
        boolean laidOut = Stream.of(POSTS, TOP_RAIL, BOTTOM_RAIL, INFILL).anyMatch(in::says);
        if (!laidOut) {
            return new Guard(wanted, in.get(HEIGHT), gap, triangle, Optional.empty(), in.get(EDGE));
        }
        if (!wanted && in.areSound(WANTED)) {
            in.refuse(WANTED, "yes, or no lines that say what the guard is built of");
        }
        Length height = in.demand(HEIGHT, LAID_OUT);
        GuardBuild build = build(in);
        in.forbid(TRIANGLE, "where the bottom rail says how high it is above the nosings: the triangle follows");
        gap.ifPresent(stated -> checkGap(in, stated, build.infill()));
        checkHeight(in, height, build);
        Optional<EdgeGuard> edge = in.get(EDGE);
        edge.ifPresent(along -> checkEdge(in, along, build));
        return new Guard(wanted, Optional.of(height), gap, triangle, Optional.of(build), edge);
    }

    private static GuardBuild build(Fields in) {
        return new GuardBuild(
                in.demand(POSTS, LAID_OUT),
                in.demand(TOP_RAIL, LAID_OUT),
                in.demand(BOTTOM_RAIL, LAID_OUT),
                in.demand(INFILL, LAID_OUT));
    }

    /** What is stated beside what is built must at least be possible. */
    private static void checkGap(Fields in, Length stated, Infill infill) {
        if (!in.areSound(GAP, INFILL)) {
            return;
        }
        if (infill instanceof Infill.Panels && stated.isPositive()) {
            in.refuse(GAP, "no gap where the infill is panels, or no such line");
        }
        findBall(infill).filter(stated::isAtLeast).ifPresent(ball -> {
            String words = Bounds.BALL.write(ball, in.units()).match(text -> text.value(), group -> "", list -> "");
            in.refuse(GAP, "less than the ball of " + words + " that the infill keeps back, or no such line");
        });
    }

    private static Optional<Length> findBall(Infill infill) {
        if (infill instanceof Infill.Balusters balusters) {
            return Optional.of(balusters.ball());
        }
        return infill instanceof Infill.Boards boards ? Optional.of(boards.ball()) : Optional.empty();
    }

    /** On the steepest slope that is built, plumb is up to twice what is square. */
    private static void checkHeight(Fields in, Length height, GuardBuild build) {
        Length rails = build.topRail()
                .thickness()
                .plus(build.bottomRail().section().thickness())
                .times(2);
        Length least = rails.plus(build.bottomRail().aboveNosings());
        if (height.isAtMost(least) && in.areSound(HEIGHT, TOP_RAIL, BOTTOM_RAIL)) {
            in.refuse(HEIGHT, "a height that leaves room between bottom rail and top rail");
        }
    }

    private static void checkEdge(Fields in, EdgeGuard edge, GuardBuild build) {
        Length rails = build.topRail()
                .thickness()
                .plus(build.bottomRail().section().thickness())
                .plus(edge.railAboveFloor().orElse(Length.ZERO));
        if (edge.height().isAtMost(rails) && in.areSound(EDGE, TOP_RAIL, BOTTOM_RAIL)) {
            in.refuse(EDGE, "a height that leaves room between bottom rail and top rail");
        }
        if (edge.ball().isPresent() && build.infill() instanceof Infill.Panels && in.areSound(EDGE, INFILL)) {
            in.refuse(EDGE, "no ball where the infill is panels");
        }
    }

    @Override
    protected void write(Guard value, Lines out) {
        out.put(WANTED, value.wanted());
        out.put(HEIGHT, value.height());
        out.put(GAP, value.opening());
        out.put(TRIANGLE, value.triangle());
        out.put(POSTS, value.build().map(GuardBuild::posts));
        out.put(TOP_RAIL, value.build().map(GuardBuild::topRail));
        out.put(BOTTOM_RAIL, value.build().map(GuardBuild::bottomRail));
        out.put(INFILL, value.build().map(GuardBuild::infill));
        out.put(EDGE, value.edge());
    }
}
