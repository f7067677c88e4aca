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
 * An indoor stair must be lit, by so much on every tread.
 *
 * @param owed the light on each tread, in words
 */
public record LightIndoors(Clause clause, String owed) implements Figured {
    @Override
    public String id() {
        return "light-indoors";
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
        if (stair.site().setting() != Site.Setting.INDOORS) {
            return Verdict.doesNotApply("the stair is outdoors");
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
        return new Look.Demand(
                Optional.empty(), Phrase.of("read a light meter on the darkest tread: " + owed + " is owed"));
    }
}
