package pitchboard.rules.kinds.surroundings;

import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** An indoor flight of this many risers needs a switch for its light at each floor. */
public record UnswitchedRisersLessThan(Clause clause, Count less) implements Bounded {
    @Override
    public String id() {
        return "unswitched-risers-less-than";
    }

    @Override
    public String subject() {
        return "risers without a switch at each floor";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnswitchedRisersLessThan withLimit(Quantity value) {
        return new UnswitchedRisersLessThan(clause, (Count) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (stair.site().setting() == Site.Setting.OUTDOORS) {
            return Verdict.doesNotApply("the stair is outdoors");
        }
        Count risers = new Count(stair.flight().risers());
        boolean dark = stair.site().lit().filter(lit -> !lit).isPresent();
        return bound().admits(risers) || dark
                ? bound().judge(
                                risers,
                                Place.WHOLE_FLIGHT,
                                () -> Phrase.of("put in a light with a switch at each floor"))
                : Verdict.cannotTell("see that the light has a switch at each floor");
    }
}
