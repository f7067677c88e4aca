package pitchboard.rules.kinds.rails;

import java.util.function.Function;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.rules.Fact;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** What the rules about handrails have in common. */
public final class Rails {
    public static final Place RAIL = Place.named("the handrail");

    private Rails() {}

    public static Verdict judge(Stair stair, Function<Handrail, Verdict> byRail) {
        Handrail handrail = stair.brief().handrail();
        return handrail.sides() == Handrail.Sides.NONE
                ? Verdict.doesNotApply("no handrail is planned")
                : byRail.apply(handrail);
    }

    static Verdict judgeHeight(Stair stair, Function<Length, Verdict> byHeight) {
        return judge(
                stair,
                rail -> rail.height()
                        .map(byHeight)
                        .orElseGet(() -> Verdict.cannotTell(
                                Fact.RAIL_HEIGHT, "decide how high the handrail is above the line of the nosings")));
    }

    /** How far a flight without any handrail climbs; nothing when it has one. */
    static Length unrailedClimb(Stair stair) {
        return stair.brief().handrail().sides() == Handrail.Sides.NONE
                ? stair.flight().totalRise()
                : Length.ZERO;
    }

    /** Whether a handrail runs along a wall. */
    public static boolean isBesideWall(Stair stair) {
        Handrail.Sides sides = stair.brief().handrail().sides();
        return (sides.isLeft() && stair.site().leftSide() == Side.WALL)
                || (sides.isRight() && stair.site().rightSide() == Side.WALL);
    }
}
