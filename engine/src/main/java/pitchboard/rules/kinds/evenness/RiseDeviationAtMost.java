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

/** No rise is farther than this from the planned one. As designed none is. */
public record RiseDeviationAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "rise-deviation-at-most";
    }

    @Override
    public String subject() {
        return "difference of a rise from the plan, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RiseDeviationAtMost withLimit(Quantity value) {
        return new RiseDeviationAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        Series.rises(stair).deviation(stair.rise()),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("make all rises alike"));
    }
}
