package pitchboard.rules.kinds.rails;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The top of a handrail may be no higher than this above the line of the nosings. */
public record HandrailHeightAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "handrail-height-at-most";
    }

    @Override
    public String subject() {
        return "height of the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public HandrailHeightAtMost withLimit(Quantity value) {
        return new HandrailHeightAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judgeHeight(
                stair,
                height -> bound().judge(
                                height,
                                Rails.RAIL,
                                () -> Phrase.of("lower the handrail by {}", OnTape.noLess(stair, height.minus(most)))));
    }
}
