package pitchboard.rules.kinds.evenness;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** All runs of a flight are alike within this, the largest against the smallest. */
public record RunSpreadAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "run-spread-at-most";
    }

    @Override
    public String subject() {
        return "difference between runs, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RunSpreadAtMost withLimit(Quantity value) {
        return new RunSpreadAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Runs.judge(stair, bound(), Series::spread);
    }
}
