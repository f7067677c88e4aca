package pitchboard.rules.kinds.guards;

import pitchboard.brief.Guard;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.railing.GuardLayout;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A guard on the open side of a flight must be at least this high above the line of the nosings. */
public record GuardHeightAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "guard-height-at-least";
    }

    @Override
    public String subject() {
        return "height of the guard";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public GuardHeightAtLeast withLimit(Quantity value) {
        return new GuardHeightAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.findLaidOut(stair, guard -> judge(stair, lowest(guard)))
                .orElseGet(() -> Guards.judge(
                        stair,
                        Guard::height,
                        Verdict.cannotTell(
                                Fact.GUARD_HEIGHT, "decide how high the guard is above the line of the nosings"),
                        height -> judge(stair, height)));
    }

    /** Its top rail as laid out, over the nosing where it is lowest. */
    private static Length lowest(GuardLayout guard) {
        return guard.top().overNosings().stream().reduce(Length::min).orElseThrow();
    }

    private Verdict judge(Stair stair, Length height) {
        return bound().judge(
                        height,
                        Guards.GUARD,
                        () -> Phrase.of("raise the guard by {}", OnTape.noLess(stair, least.minus(height))));
    }
}
