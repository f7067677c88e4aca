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

/** A round handrail may be no thicker than this. */
public record RoundGripAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "round-grip-at-most";
    }

    @Override
    public String subject() {
        return "diameter of the round handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RoundGripAtMost withLimit(Quantity value) {
        return new RoundGripAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Grips.judgeRound(
                stair,
                diameter -> bound().judge(diameter, Rails.RAIL, () -> Phrase.of("use a rail at most {} thick", most)));
    }
}
