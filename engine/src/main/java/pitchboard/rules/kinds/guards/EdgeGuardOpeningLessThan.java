package pitchboard.rules.kinds.guards;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A ball of this size must not pass through the guard along the edge of the upper floor. */
public record EdgeGuardOpeningLessThan(Clause clause, Length less) implements Bounded {
    @Override
    public String id() {
        return "edge-guard-opening-less-than";
    }

    @Override
    public String subject() {
        return "widest opening in the guard along the upper floor's edge";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public EdgeGuardOpeningLessThan withLimit(Quantity value) {
        return new EdgeGuardOpeningLessThan(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return EdgeOpening.judge(stair, bound(), OnTape.less(stair, less));
    }
}
