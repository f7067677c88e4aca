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

/** The handrail goes on level behind the top riser for at least this long. */
public record RailTopExtensionAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "rail-top-extension-at-least";
    }

    @Override
    public String subject() {
        return "handrail past the top riser";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RailTopExtensionAtLeast withLimit(Quantity value) {
        return new RailTopExtensionAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judge(
                stair,
                rail -> bound().judge(
                                rail.past().head(),
                                Rails.RAIL,
                                () -> Phrase.of(
                                        "let the handrail go on level past the top riser by {} more",
                                        OnTape.noLess(
                                                stair, least.minus(rail.past().head())))));
    }
}
