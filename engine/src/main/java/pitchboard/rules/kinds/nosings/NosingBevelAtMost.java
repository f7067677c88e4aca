package pitchboard.rules.kinds.nosings;

import pitchboard.brief.Nosing;
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

/** Where the front edge of a tread is bevelled, by no more than this. */
public record NosingBevelAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "nosing-bevel-at-most";
    }

    @Override
    public String subject() {
        return "bevel of the nosing";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public NosingBevelAtMost withLimit(Quantity value) {
        return new NosingBevelAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (stair.brief().nosing().isEmpty()) {
            return Verdict.cannotTell(
                    Fact.NOSING, "decide whether the nosings are left square, rounded or bevelled, and by how much");
        }
        return stair.brief().nosing().get() instanceof Nosing.Bevelled edge
                ? bound().judge(
                                edge.bevel(),
                                Place.EVERY_STEP,
                                () -> Phrase.of("take the bevel down to {}", OnTape.noMore(stair, most)))
                : Verdict.doesNotApply("the nosings are not bevelled");
    }
}
