package pitchboard.rules.kinds.rails;

import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** No part of the width that is owed may be farther than this from a handrail. How wide the way must be depends on who
 * uses it, so a wider flight is a question, not a failure. */
public record HandrailReachAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "handrail-reach-at-most";
    }

    @Override
    public String subject() {
        return "farthest place from a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public HandrailReachAtMost withLimit(Quantity value) {
        return new HandrailReachAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judge(stair, rail -> judge(stair, rail));
    }

    private Verdict judge(Stair stair, Handrail rail) {
        Length farthest = stair.brief().width().dividedBy(rail.sides().count());
        return bound().admits(farthest)
                ? new Verdict.Pass(farthest, bound())
                : Verdict.cannotTell(
                        "ask how wide the way must be here: no part of that width may be more than {} from a handrail, and {} is the farthest",
                        most,
                        farthest);
    }
}
