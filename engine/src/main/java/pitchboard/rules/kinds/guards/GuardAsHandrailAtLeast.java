package pitchboard.rules.kinds.guards;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Where the top of a guard serves as the handrail, it must be at least this high above the line of the nosings. */
public record GuardAsHandrailAtLeast(Clause clause, Length least) implements Bounded {

    @Override
    public String id() {
        return "guard-as-handrail-at-least";
    }

    @Override
    public String subject() {
        return "height of the guard whose top is the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public GuardAsHandrailAtLeast withLimit(Quantity value) {
        return new GuardAsHandrailAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.judgeAsHandrail(
                stair,
                height -> bound().judge(
                                height,
                                Guards.GUARD,
                                () -> Phrase.of(
                                        "raise the guard by {}, or fit the handrail apart from it",
                                        OnTape.noLess(stair, least.minus(height)))));
    }
}
