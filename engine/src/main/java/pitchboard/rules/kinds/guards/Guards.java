package pitchboard.rules.kinds.guards;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.railing.GuardLayout;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** What the rules about guards have in common. */
final class Guards {
    static final Place GUARD = Place.named("the guard");

    private Guards() {}

    /** Judges what a guard comes to when it is laid out; empty when it is not said what it is built of. */
    static Optional<Verdict> findLaidOut(Stair stair, Function<GuardLayout, Verdict> byLayout) {
        if (stair.brief().guard().build().isEmpty() || GuardLayout.hands(stair).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(GuardLayout.find(stair)
                .map(byLayout)
                .orElseGet(() -> Verdict.cannotTell(
                        Fact.GUARD_HEIGHT, "decide on a height that leaves room between the rails of the guard")));
    }

    /**
     * Judges one measure of the guard.
     *
     * @param open what to decide while it is open
     */
    static Verdict judge(
            Stair stair, Function<Guard, Optional<Length>> measure, Verdict open, Function<Length, Verdict> byMeasure) {
        Guard guard = stair.brief().guard();
        if (!guard.wanted()) {
            return Verdict.doesNotApply("no guard is planned");
        }
        return measure.apply(guard).map(byMeasure).orElse(open);
    }

    /** Judges what is owed wherever an open side has no guard: nothing of it while a guard stands there. */
    static Verdict judgeOpenSide(Stair stair, Limit limit, Quantity guarded, Quantity unguarded) {
        if (stair.site().leftSide() == Side.WALL && stair.site().rightSide() == Side.WALL) {
            return Verdict.doesNotApply("both sides are walls");
        }
        Quantity measured = stair.brief().guard().wanted() ? guarded : unguarded;
        return limit.judge(measured, Place.WHOLE_FLIGHT, () -> Phrase.of("put a guard on every open side"));
    }

    /** Judges the height at which the top of the guard is the handrail too; does not apply where it is not. */
    static Verdict judgeAsHandrail(Stair stair, Function<Length, Verdict> byHeight) {
        Optional<Length> rail = stair.brief().handrail().height();
        if (!isRailOnOpenSide(stair)) {
            return Verdict.doesNotApply("no handrail runs along an open side");
        }
        return judge(
                stair,
                guard -> rail.flatMap(any -> guard.height()),
                Verdict.cannotTell(
                        rail.isEmpty() ? Fact.RAIL_HEIGHT : Fact.GUARD_HEIGHT,
                        "decide how high guard and handrail are: at one height the guard's top is the handrail"),
                height -> rail.filter(height::equals).isPresent()
                        ? byHeight.apply(height)
                        : Verdict.doesNotApply("the handrail is not the top of the guard"));
    }

    private static boolean isRailOnOpenSide(Stair stair) {
        Handrail.Sides sides = stair.brief().handrail().sides();
        return (sides.isLeft() && stair.site().leftSide() == Side.OPEN)
                || (sides.isRight() && stair.site().rightSide() == Side.OPEN);
    }
}
