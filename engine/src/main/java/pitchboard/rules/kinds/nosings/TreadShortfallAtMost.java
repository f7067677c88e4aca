package pitchboard.rules.kinds.nosings;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Treads may be no more than this shorter than the run, so that no wider slot opens between them. */
public record TreadShortfallAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "tread-shortfall-at-most";
    }

    @Override
    public String subject() {
        return "run over the depth of the tread";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public TreadShortfallAtMost withLimit(Quantity value) {
        return new TreadShortfallAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length missing = Length.max(Length.ZERO, stair.projection().negated());
        return bound().judge(
                        missing,
                        Place.EVERY_STEP,
                        () -> Phrase.of(
                                "make the treads {} wide",
                                OnTape.noLess(stair, stair.run().minus(most))));
    }
}
