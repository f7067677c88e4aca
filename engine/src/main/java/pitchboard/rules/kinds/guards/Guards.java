package pitchboard.rules.kinds.guards;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.brief.Guard;
import pitchboard.measure.Length;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** What the rules about guards have in common. */
final class Guards {
    static final Place GUARD = Place.named("the guard");

    private Guards() {}

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
