package pitchboard.rules.kinds.rails;

import java.util.function.Function;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.rules.Fact;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** What the rules about handrails have in common. */
final class Rails {
    static final Place RAIL = Place.named("the handrail");

    private static final Verdict NOT_FLAT = Verdict.doesNotApply("the rail is round");
    private static final Verdict RECESSED = Verdict.doesNotApply("the rail has finger recesses");

    private Rails() {}

    static Verdict judge(Stair stair, Function<Handrail, Verdict> byRail) {
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

    static Verdict judgeRound(Stair stair, Function<Length, Verdict> byDiameter) {
        return judgeGrip(
                stair,
                grip -> grip instanceof Handrail.Grip.Round round
                        ? byDiameter.apply(round.diameter())
                        : Verdict.doesNotApply("the rail is not round"));
    }

    static Verdict judgeRectangle(Stair stair, Function<Handrail.Grip.Rectangle, Verdict> byRectangle) {
        return judgeGrip(
                stair,
                grip -> grip instanceof Handrail.Grip.Rectangle rectangle
                        ? byRectangle.apply(rectangle)
                        : grip instanceof Handrail.Grip.Round ? NOT_FLAT : RECESSED);
    }

    /** The sides of any rail that is not round. */
    static Verdict judgeSides(Stair stair, Function<Handrail.Grip.Rectangle, Verdict> bySides) {
        return judgeGrip(stair, grip -> {
            if (grip instanceof Handrail.Grip.Recessed recessed) {
                return bySides.apply(recessed.section());
            }
            return grip instanceof Handrail.Grip.Rectangle rectangle ? bySides.apply(rectangle) : NOT_FLAT;
        });
    }

    static Verdict judgeGrip(Stair stair, Function<Handrail.Grip, Verdict> byGrip) {
        return judge(
                stair,
                rail -> rail.grip()
                        .map(byGrip)
                        .orElseGet(() -> Verdict.cannotTell(Fact.RAIL_GRIP, "decide what section the handrail has")));
    }

    static Length perimeter(Handrail.Grip.Rectangle rail) {
        return rail.width().plus(rail.height()).times(2);
    }

    /** From corner to corner, exactly. */
    static Length diagonal(Handrail.Grip.Rectangle rail) {
        return Pitch.of(rail.height(), rail.width()).alongForLevel(rail.width());
    }
}
