package pitchboard.rules.kinds.room;

import java.util.List;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.OnTape;
import pitchboard.stair.Stair;

/** How wide the way up is. */
final class Widths {
    private static final List<String> PLANNED =
            List.of("no handrail is planned", "one handrail is planned", "handrails are planned on both sides");

    private Widths() {}

    static Length clear(Stair stair) {
        return stair.brief().clearWidth().orElse(stair.brief().width());
    }

    /** What is left between or beside so many rails, when the stair has just so many. */
    static Verdict besideRails(Stair stair, int rails, Limit limit) {
        Handrail handrail = stair.brief().handrail();
        if (handrail.sides().count() != rails) {
            return Verdict.doesNotApply(PLANNED.get(handrail.sides().count()));
        }
        return handrail.projection()
                .map(projection -> judge(stair, clear(stair).minus(projection.times(rails)), limit))
                .orElseGet(() ->
                        Verdict.cannotTell(Fact.RAIL_REACH, "decide how far rail and brackets reach into the width"));
    }

    private static Verdict judge(Stair stair, Length width, Limit limit) {
        Length missing = ((Length) limit.value()).minus(width);
        return limit.judge(
                width, Place.WHOLE_FLIGHT, () -> Phrase.of("widen the flight by {}", OnTape.noLess(stair, missing)));
    }
}
