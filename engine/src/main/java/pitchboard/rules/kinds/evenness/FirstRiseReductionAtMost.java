package pitchboard.rules.kinds.evenness;

import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The first rise alone may be lower than the others, by this part of them. As designed it is not. */
public record FirstRiseReductionAtMost(Clause clause, Ratio most) implements Bounded {

    @Override
    public String id() {
        return "first-rise-reduction-at-most";
    }

    @Override
    public String subject() {
        return "first rise lower than the others by, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public FirstRiseReductionAtMost withLimit(Quantity value) {
        return new FirstRiseReductionAtMost(clause, (Ratio) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        Ratio.ONE.minus(Series.rises(stair).first().over(stair.rise())),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("make all rises alike"));
    }
}
