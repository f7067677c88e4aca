package pitchboard.rules.kinds;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.rules.Fact;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** The edge of the upper floor, which is a nosing like any other when the floor itself is the last step. */
public final class FloorEdge {
    private FloorEdge() {}

    /** Whether the floor is a step of the flight at all. */
    public static boolean isStep(Stair stair) {
        return stair.flight().headJoin() == HeadJoin.ONE_DOWN;
    }

    /** Asks for the edge when it was not measured; else judges how far it reaches in front of the riser below it. */
    public static Verdict judge(Stair stair, Function<Length, Verdict> byProjection) {
        if (!isStep(stair)) {
            return Verdict.doesNotApply("the top tread is level with the floor, so the floor's edge is no step");
        }
        return findProjection(stair)
                .map(byProjection)
                .orElseGet(() -> Verdict.cannotTell(
                        Fact.DECKING_OVERHANG,
                        "measure how far the decking of the upper floor reaches past the face of the header"));
    }

    /** From the header's face, before which a riser board may stand. */
    private static Optional<Length> findProjection(Stair stair) {
        return stair.site().head().deckingOverhang().map(overhang -> overhang.minus(stair.riserThickness()));
    }

    /** How far the decking must reach past the header's face to reach this far in front of the riser. */
    public static Length overhangFor(Stair stair, Length projection) {
        return projection.plus(stair.riserThickness());
    }

    /** Depth of the top tread, from its nosing to the floor's edge. */
    public static Length topRun(Stair stair, Length projectionOfEdge) {
        return stair.run().plus(stair.projection()).minus(projectionOfEdge);
    }
}
