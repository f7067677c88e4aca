package pitchboard.rules.kinds.guards;

import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.site.Side;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Where the top of a guard serves as the handrail, it may be no higher than this above the line of the nosings. */
public record GuardAsHandrailAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "guard-as-handrail-at-most";
    }

    @Override
    public String subject() {
        return "height of the guard whose top is the handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public GuardAsHandrailAtMost withLimit(Quantity value) {
        return new GuardAsHandrailAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        Optional<Length> rail = stair.brief().handrail().height();
        if (!isRailOnOpenSide(stair)) {
            return Verdict.doesNotApply("no handrail runs along an open side");
        }
        return Guards.judge(
                stair,
                guard -> rail.flatMap(any -> guard.height()),
                Verdict.cannotTell(
                        rail.isEmpty() ? Fact.RAIL_HEIGHT : Fact.GUARD_HEIGHT,
                        "decide how high guard and handrail are: at one height the guard's top is the handrail"),
                height -> rail.filter(height::equals).isPresent()
                        ? judge(stair, height)
                        : Verdict.doesNotApply("the handrail is not the top of the guard"));
    }

    private Verdict judge(Stair stair, Length height) {
        return bound().judge(
                        height,
                        Guards.GUARD,
                        () -> Phrase.of(
                                "lower the guard by {}, or fit the handrail apart from it",
                                OnTape.noLess(stair, height.minus(most))));
    }

    private static boolean isRailOnOpenSide(Stair stair) {
        Handrail.Sides sides = stair.brief().handrail().sides();
        return (sides.isLeft() && stair.site().leftSide() == Side.OPEN)
                || (sides.isRight() && stair.site().rightSide() == Side.OPEN);
    }
}
