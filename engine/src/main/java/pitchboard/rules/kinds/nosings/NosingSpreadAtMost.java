package pitchboard.rules.kinds.nosings;

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

/** All nosings of a flight are alike within this, the edge of the upper floor among them. */
public record NosingSpreadAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "nosing-spread-at-most";
    }

    @Override
    public String subject() {
        return "difference between nosings, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public NosingSpreadAtMost withLimit(Quantity value) {
        return new NosingSpreadAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (!FloorEdge.isStep(stair)) {
            return bound().judge(Length.ZERO, Place.WHOLE_FLIGHT, () -> remedy(stair));
        }
        return FloorEdge.judge(
                stair, edge -> bound().judge(edge.minus(stair.projection()).abs(), Place.HEAD, () -> remedy(stair)));
    }

    private Phrase remedy(Stair stair) {
        return Phrase.of(
                "bring the floor's edge to {} past the face of the header, so that it reaches out like the treads",
                FloorEdge.overhangFor(stair, stair.projection()));
    }
}
