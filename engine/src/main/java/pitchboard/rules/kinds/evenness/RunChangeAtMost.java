package pitchboard.rules.kinds.evenness;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Neighbouring runs are alike within this. */
public record RunChangeAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "run-change-at-most";
    }

    @Override
    public String subject() {
        return "difference between neighbouring runs, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RunChangeAtMost withLimit(Quantity value) {
        return new RunChangeAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Runs.judge(stair, bound(), Series::change);
    }
}
