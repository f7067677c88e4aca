package pitchboard.rules.kinds.surroundings;

import java.util.Optional;
import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.Sight;
import pitchboard.site.Sights;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/**
 * An outdoor stair must be lit, from the place the book says.
 *
 * @param owed where the light must be, in words
 */
public record LightOutdoors(Clause clause, String owed) implements Figured {
    @Override
    public String id() {
        return "light-outdoors";
    }

    @Override
    public String subject() {
        return "lights at the stair";
    }

    @Override
    public String figure() {
        return owed;
    }

    @Override
    public Verdict judge(Stair stair) {
        if (stair.site().setting() != Site.Setting.OUTDOORS) {
            return Verdict.doesNotApply("the stair is indoors");
        }
        return stair.site()
                .lit()
                .map(lit -> judge(stair.site().sights(), lit))
                .orElseGet(() -> Verdict.cannotTell(Fact.LIGHT, "say whether the stair is lit"));
    }

    /** A light that is there may still stand in the wrong place or be too weak. */
    private Verdict judge(Sights seen, boolean lit) {
        return lit
                ? Look.at(Fact.LIGHT_ENOUGH, Sight.BRIGHT_ENOUGH).judge(seen, demand())
                : Limit.atLeast(new Count(1))
                        .judge(new Count(0), Place.WHOLE_FLIGHT, () -> Phrase.of("put in a light"));
    }

    private Look.Demand demand() {
        return new Look.Demand(Optional.empty(), Phrase.of("see that a light is " + owed));
    }
}
