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

/** The first rise alone may be farther from the plan than the others, by this. As designed it is not. */
public record FirstRiseDeviationAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "first-rise-deviation-at-most";
    }

    @Override
    public String subject() {
        return "difference of the first rise from the plan, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public FirstRiseDeviationAtMost withLimit(Quantity value) {
        return new FirstRiseDeviationAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        Series.rises(stair).first().minus(stair.rise()).abs(),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("make all rises alike"));
    }
}
