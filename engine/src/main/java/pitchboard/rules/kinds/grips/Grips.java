package pitchboard.rules.kinds.grips;

import java.util.function.Function;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.rules.Fact;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.rails.Rails;
import pitchboard.stair.Stair;

/** What the rules about the section of a handrail have in common. */
final class Grips {
    private static final Verdict NOT_FLAT = Verdict.doesNotApply("the rail is round");
    private static final Verdict RECESSED = Verdict.doesNotApply("the rail has finger recesses");

    private Grips() {}

    static Verdict judgeRound(Stair stair, Function<Length, Verdict> byDiameter) {
        return judge(
                stair,
                grip -> grip instanceof Handrail.Grip.Round round
                        ? byDiameter.apply(round.diameter())
                        : Verdict.doesNotApply("the rail is not round"));
    }

    static Verdict judgeRectangle(Stair stair, Function<Handrail.Grip.Rectangle, Verdict> byRectangle) {
        return judge(
                stair,
                grip -> grip instanceof Handrail.Grip.Rectangle rectangle
                        ? byRectangle.apply(rectangle)
                        : grip instanceof Handrail.Grip.Round ? NOT_FLAT : RECESSED);
    }

    /** The sides of any rail that is not round. */
    static Verdict judgeSides(Stair stair, Function<Handrail.Grip.Rectangle, Verdict> bySides) {
        return judge(stair, grip -> {
            if (grip instanceof Handrail.Grip.Recessed recessed) {
                return bySides.apply(recessed.section());
            }
            return grip instanceof Handrail.Grip.Rectangle rectangle ? bySides.apply(rectangle) : NOT_FLAT;
        });
    }

    static Verdict judge(Stair stair, Function<Handrail.Grip, Verdict> byGrip) {
        return Rails.judge(
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
