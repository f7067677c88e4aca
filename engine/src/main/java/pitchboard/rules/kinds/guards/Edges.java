package pitchboard.rules.kinds.guards;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.Guard;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.plane.Point;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Ground;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.EdgeAbove;
import pitchboard.stair.Stair;

/** What the rules about the edge of the upper floor have in common. */
final class Edges {
    static final Place EDGE_GUARD = Place.named("the guard along the upper floor's edge");

    private Edges() {}

    /** From the floor's edge down to what lies plumb below the header, and on by what falls away beside it. */
    static Length drop(Stair stair) {
        return under(stair).plus(stair.site().fallBeside().orElse(Length.ZERO));
    }

    private static Length under(Stair stair) {
        return Ground.below(stair, edge(stair));
    }

    private static Point edge(Stair stair) {
        return Point.of(stair.headerFace(), stair.flight().totalRise());
    }

    /** Judges how deep it is below an open edge without a guard: as deep as it may be, or the depth it must stay below. */
    static Verdict judgeDrop(Stair stair, Limit limit) {
        Optional<EdgeAbove> edge = stair.site().edgeAbove();
        if (edge.filter(open -> !open.isOpen()).isPresent()) {
            return closed();
        }
        if (isGuarded(stair)) {
            return limit.judge(Length.ZERO, EDGE_GUARD, Edges::remedy);
        }
        if (edge.isEmpty() && !limit.admits(drop(stair))) {
            return measureEdge();
        }
        return limit.admits(under(stair)) && Drop.besideLower(stair).isEmpty()
                ? Drop.askBeside(limit, under(stair), List.of())
                : limit.judge(drop(stair), Place.at("the upper floor's edge", edge(stair)), Edges::remedy);
    }

    private static boolean isGuarded(Stair stair) {
        Guard guard = stair.brief().guard();
        return guard.wanted() && guard.edge().isPresent();
    }

    private static Phrase remedy() {
        return Phrase.of("put a guard along the open edge of the upper floor");
    }

    private static Verdict closed() {
        return Verdict.doesNotApply("the edge of the upper floor is closed beside the flight");
    }

    private static Verdict measureEdge() {
        return Verdict.cannotTell(
                Fact.EDGE_ABOVE,
                "measure how much of the upper floor's edge is open to the left and right of the flight");
    }

    /** Judges one measure of the guard along the edge, once there is to be one. */
    static Verdict judge(Stair stair, Function<EdgeGuard, Verdict> byGuard) {
        Guard guard = stair.brief().guard();
        Optional<EdgeAbove> edge = stair.site().edgeAbove();
        if (!guard.wanted()) {
            return Verdict.doesNotApply("no guard is planned");
        }
        if (edge.filter(open -> !open.isOpen()).isPresent()) {
            return closed();
        }
        if (guard.edge().isPresent()) {
            return byGuard.apply(guard.edge().get());
        }
        return edge.isEmpty()
                ? measureEdge()
                : Verdict.doesNotApply("no guard is planned along the edge of the upper floor");
    }

    /** The one with the widest opening; empty when none is laid out. */
    static Optional<EdgeLayout> findWidest(Stair stair) {
        return EdgeLayout.find(stair).stream().max(Comparator.comparing(EdgeLayout::opening));
    }
}
