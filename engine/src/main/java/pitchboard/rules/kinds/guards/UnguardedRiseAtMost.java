package pitchboard.rules.kinds.guards;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A flight with an open side and no guard on it may climb no more than this. */
public record UnguardedRiseAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "unguarded-rise-at-most";
    }

    @Override
    public String subject() {
        return "climb beside an open side without a guard";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public UnguardedRiseAtMost withLimit(Quantity value) {
        return new UnguardedRiseAtMost(clause, (Length) value);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.judgeOpenSide(stair, bound(), Length.ZERO, stair.flight().totalRise());
    }
}
