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

/** A handrail that is not round and has no finger recesses may be no longer than this around. */
public record GripPerimeterAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "grip-perimeter-at-most";
    }

    @Override
    public String subject() {
        return "length around the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public GripPerimeterAtMost withLimit(Quantity value) {
        return new GripPerimeterAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Grips.judgeRectangle(
                stair,
                rail -> bound().judge(
                                Grips.perimeter(rail),
                                Rails.RAIL,
                                () -> Phrase.of("use a rail at most {} around, or one with finger recesses", most)));
    }
}
