package pitchboard.rules.kinds.guards;

import pitchboard.measure.Count;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A flight with an open side and no guard on it must have fewer risers than this. */
public record UnguardedRisersLessThan(Clause clause, Count less) implements Bounded {

    @Override
    public String id() {
        return "unguarded-risers-less-than";
    }

    @Override
    public String subject() {
        return "risers beside an open side without a guard";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnguardedRisersLessThan withLimit(Quantity value) {
        return new UnguardedRisersLessThan(clause, (Count) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.judgeOpenSide(
                stair, bound(), new Count(0), new Count(stair.flight().risers()));
    }
}
