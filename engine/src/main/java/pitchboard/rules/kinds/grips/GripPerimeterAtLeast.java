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

/** A handrail that is not round must be at least this long around. */
public record GripPerimeterAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "grip-perimeter-at-least";
    }

    @Override
    public String subject() {
        return "length around the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public GripPerimeterAtLeast withLimit(Quantity value) {
        return new GripPerimeterAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Grips.judgeSides(
                stair,
                rail -> bound().judge(
                                Grips.perimeter(rail),
                                Rails.RAIL,
                                () -> Phrase.of("use a rail at least {} around", least)));
    }
}
