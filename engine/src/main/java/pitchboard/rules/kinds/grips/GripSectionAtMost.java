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

/** A handrail that is not round and has no finger recesses may be no wider than this across its corners. */
public record GripSectionAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "grip-section-at-most";
    }

    @Override
    public String subject() {
        return "widest measure across the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public GripSectionAtMost withLimit(Quantity value) {
        return new GripSectionAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Grips.judgeRectangle(
                stair,
                rail -> bound().judge(
                                Grips.diagonal(rail),
                                Rails.RAIL,
                                () -> Phrase.of("use a rail at most {} across", most)));
    }
}
