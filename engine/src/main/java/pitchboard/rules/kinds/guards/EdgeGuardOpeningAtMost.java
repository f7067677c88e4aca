package pitchboard.rules.kinds.guards;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The openings in the guard along the edge of the upper floor may be no wider than this. */
public record EdgeGuardOpeningAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "edge-guard-opening-at-most";
    }

    @Override
    public String subject() {
        return "widest opening in the guard along the upper floor's edge";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public EdgeGuardOpeningAtMost withLimit(Quantity value) {
        return new EdgeGuardOpeningAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return EdgeOpening.judge(stair, bound(), OnTape.noMore(stair, most));
    }
}
