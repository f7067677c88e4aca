package pitchboard.rules.kinds.evenness;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Neighbouring rises are alike within this. As designed they are exactly alike. */
public record RiseChangeAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "rise-change-at-most";
    }

    @Override
    public String subject() {
        return "difference between neighbouring rises, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RiseChangeAtMost withLimit(Quantity value) {
        return new RiseChangeAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(Series.rises(stair).change(), Place.WHOLE_FLIGHT, () -> Phrase.of("make all rises alike"));
    }
}
