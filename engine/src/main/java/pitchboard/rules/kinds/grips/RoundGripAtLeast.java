package pitchboard.rules.kinds.grips;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.rails.Rails;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A round handrail must be at least this thick. */
public record RoundGripAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "round-grip-at-least";
    }

    @Override
    public String subject() {
        return "diameter of the round handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RoundGripAtLeast withLimit(Quantity value) {
        return new RoundGripAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Grips.judgeRound(
                stair,
                diameter ->
                        bound().judge(diameter, Rails.RAIL, () -> Phrase.of("use a rail at least {} thick", least)));
    }
}
