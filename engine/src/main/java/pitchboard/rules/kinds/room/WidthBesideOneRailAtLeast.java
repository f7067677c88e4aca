package pitchboard.rules.kinds.room;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Beside one handrail the way must still be this wide. */
public record WidthBesideOneRailAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "width-beside-one-rail-at-least";
    }

    @Override
    public String subject() {
        return "clear width beside the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public WidthBesideOneRailAtLeast withLimit(Quantity value) {
        return new WidthBesideOneRailAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Widths.besideRails(stair, 1, bound());
    }
}
