package pitchboard.rules.kinds.guards;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.Guard;
import pitchboard.measure.Length;
import pitchboard.railing.GuardLayout;
import pitchboard.rules.Fact;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** What the rules about guards have in common. */
final class Guards {
    static final Place GUARD = Place.named("the guard");

    private Guards() {}

    /** Judges what a guard comes to when it is laid out; empty when it is not said what it is built of. */
    static Optional<Verdict> findLaidOut(Stair stair, Function<GuardLayout, Verdict> byLayout) {
        if (stair.brief().guard().build().isEmpty() || GuardLayout.sides(stair).isEmpty()) {
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
}
