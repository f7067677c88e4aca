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

/** The top of a handrail must be at least this high above the line of the nosings. */
public record HandrailHeightAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "handrail-height-at-least";
    }

    @Override
    public String subject() {
        return "height of the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public HandrailHeightAtLeast withLimit(Quantity value) {
        return new HandrailHeightAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judgeHeight(
                stair,
                height -> bound().judge(
                                height,
                                Rails.RAIL,
                                () -> Phrase.of(
                                        "raise the handrail by {}", OnTape.noLess(stair, least.minus(height)))));
    }
}
