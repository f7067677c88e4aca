package pitchboard.rules.kinds.steps;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.FloorEdge;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The top tread, too, may be no deeper than this, from its nosing to the edge of the floor. */
public record TopRunAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "top-run-at-most";
    }

    @Override
    public String subject() {
        return "run of the top step, to the floor's edge";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public TopRunAtMost withLimit(Quantity value) {
        return new TopRunAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return FloorEdge.judge(
                stair,
                edge -> bound().judge(
                                FloorEdge.topRun(stair, edge),
                                Place.HEAD,
                                () -> remedy(stair, FloorEdge.topRun(stair, edge))));
    }

    private Phrase remedy(Stair stair, Length run) {
        return Phrase.of("bring the floor's edge out by {}", OnTape.noLess(stair, run.minus(most)));
    }
}
