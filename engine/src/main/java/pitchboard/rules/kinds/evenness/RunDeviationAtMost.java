package pitchboard.rules.kinds.evenness;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** No run is farther than this from the planned one. */
public record RunDeviationAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "run-deviation-at-most";
    }

    @Override
    public String subject() {
        return "difference of a run from the plan, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RunDeviationAtMost withLimit(Quantity value) {
        return new RunDeviationAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Runs.judge(stair, bound(), runs -> runs.deviation(stair.run()));
    }
}
