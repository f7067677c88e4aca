package pitchboard.rules.kinds.steps;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.FloorEdge;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** All runs of a flight are alike within this. By design only the top one can differ, where the floor's edge does not
 * reach out as far as the treads do. */
public record RunSpreadAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "run-spread-at-most";
    }

    @Override
    public String subject() {
        return "difference between runs, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RunSpreadAtMost withLimit(Quantity value) {
        return new RunSpreadAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (!FloorEdge.isStep(stair)) {
            return bound().judge(Length.ZERO, Place.WHOLE_FLIGHT, () -> remedy(stair));
        }
        return FloorEdge.judge(
                stair,
                edge -> bound().judge(
                                FloorEdge.topRun(stair, edge).minus(stair.run()).abs(),
                                Place.HEAD,
                                () -> remedy(stair)));
    }

    private Phrase remedy(Stair stair) {
        return Phrase.of(
                "bring the floor's edge to {} past the face of the header, so that it reaches out like the treads",
                FloorEdge.overhangFor(stair, stair.projection()));
    }
}
