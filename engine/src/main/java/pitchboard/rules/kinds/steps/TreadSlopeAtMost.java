package pitchboard.rules.kinds.steps;

import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Treads may slope no more than this. As designed they are level. */
public record TreadSlopeAtMost(Clause clause, Ratio most) implements Bounded {
    @Override
    public String id() {
        return "tread-slope-at-most";
    }

    @Override
    public String subject() {
        return "slope of the treads, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public TreadSlopeAtMost withLimit(Quantity value) {
        return new TreadSlopeAtMost(clause, (Ratio) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(Ratio.ZERO, Place.EVERY_STEP, () -> Phrase.of("set the treads level"));
    }
}
