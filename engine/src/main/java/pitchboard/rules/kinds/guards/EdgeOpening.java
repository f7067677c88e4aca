package pitchboard.rules.kinds.guards;

import java.util.Optional;
import pitchboard.brief.Infill;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Spacing;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** Judges the widest opening of the guard along the edge: between its pieces, under its rail, and to the flight's guard. */
final class EdgeOpening {
    private EdgeOpening() {}

    /**
     * Judges it as laid out, else as stated for the guard.
     *
     * @param most the widest opening on the crew's tape that passes
     */
    static Verdict judge(Stair stair, Limit limit, Length most) {
        return Edges.judge(
                stair,
                guard -> Edges.findWidest(stair)
                        .map(widest ->
                                limit.judge(widest.opening(), Edges.EDGE_GUARD, () -> remedy(widest, limit, most)))
                        .orElseGet(() -> stated(stair, limit, most)));
    }

    private static Verdict stated(Stair stair, Limit limit, Length most) {
        return stair.brief()
                .guard()
                .opening()
                .map(opening ->
                        limit.judge(opening, Edges.EDGE_GUARD, () -> Phrase.of("leave openings of {} at most", most)))
                .orElseGet(() -> Verdict.cannotTell(
                        stair.site().edgeAbove().isPresent() ? Fact.GUARD_OPENING : Fact.EDGE_ABOVE,
                        "decide how wide the openings in the guard along the upper floor's edge are"));
    }

    /** The rail first, then what stands beside the flight, then the infill. */
    private static Phrase remedy(EdgeLayout guard, Limit limit, Length most) {
        if (!limit.admits(guard.railAboveFloor())) {
            return Phrase.of("lower the bottom rail along the upper floor's edge to {} above the floor", most);
        }
        Optional<Length> beside = guard.gapToFlight().filter(gap -> !limit.admits(gap));
        if (beside.isPresent()) {
            return Phrase.of(
                    "move the last post of the flight {} toward the upper floor, or close the gap beside it",
                    beside.get().minus(most));
        }
        return findSpacing(guard, limit)
                .map(spacing -> Phrase.of(
                        "use {} " + pieces(guard) + " in every bay along the upper floor's edge: the gap becomes {}",
                        new Count(spacing.count()),
                        spacing.gap()))
                .orElseGet(() -> Phrase.of("use narrower pieces, so that gaps of {} at most are left", most));
    }

    private static Optional<Spacing> findSpacing(EdgeLayout guard, Limit limit) {
        return guard.spacing(Optional.of((Length) limit.value())).filter(spacing -> limit.admits(spacing.gap()));
    }

    private static String pieces(EdgeLayout guard) {
        return guard.infill() instanceof Infill.Balusters ? "balusters" : "boards";
    }
}
