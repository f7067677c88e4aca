package pitchboard.rules.kinds.rails;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Limit;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The handrail goes on at the slope of the flight before the lowest nosing, for at least one run measured level. */
public record RailBottomExtension(Clause clause) implements Rule {
    @Override
    public String id() {
        return "rail-bottom-extension";
    }

    @Override
    public String subject() {
        return "handrail past the bottom riser";
    }

    @Override
    public Verdict judge(Stair stair) {
        Length run = stair.run();
        return Rails.judge(
                stair,
                rail -> Limit.atLeast(run)
                        .judge(
                                rail.past().foot(),
                                Rails.RAIL,
                                () -> Phrase.of(
                                        "let the handrail go on along the slope before the bottom nosing, {} further"
                                                + " measured level",
                                        OnTape.noLess(
                                                stair, run.minus(rail.past().foot())))));
    }
}
