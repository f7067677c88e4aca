package pitchboard.rules.kinds.room;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Between two handrails the way must still be this wide. */
public record WidthBesideTwoRailsAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "width-beside-two-rails-at-least";
    }

    @Override
    public String subject() {
        return "clear width between the handrails";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public WidthBesideTwoRailsAtLeast withLimit(Quantity value) {
        return new WidthBesideTwoRailsAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Widths.besideRails(stair, 2, bound());
    }
}
