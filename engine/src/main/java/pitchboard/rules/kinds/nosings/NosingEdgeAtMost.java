package pitchboard.rules.kinds.nosings;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The front edge of a tread may be rounded or bevelled by no more than this. */
public record NosingEdgeAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "nosing-edge-at-most";
    }

    @Override
    public String subject() {
        return "rounding or bevel of the nosing";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public NosingEdgeAtMost withLimit(Quantity value) {
        return new NosingEdgeAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return stair.brief()
                .nosing()
                .map(edge -> bound().judge(
                                edge.size().orElse(Length.ZERO),
                                Place.EVERY_STEP,
                                () -> Phrase.of("round or bevel the nosings by {}", OnTape.noMore(stair, most))))
                .orElseGet(() -> Verdict.cannotTell(
                        Fact.NOSING,
                        "decide whether the nosings are left square, rounded or bevelled, and by how much"));
    }
}
