package pitchboard.rules.kinds.surroundings;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.Sights;

/** How a matter is judged by what somebody saw. */
@FunctionalInterface
interface Look {
    Verdict judge(Sights seen, Demand demand);

    /**
     * What the book asks.
     *
     * @param limit the number in it; empty when it has none that a tape can measure
     * @param words what to measure or look at, which is also what to do where it is amiss
     */
    record Demand(Optional<Limit> limit, Phrase words) {
        Verdict cannotTell(Fact fact) {
            return Verdict.cannotTell(fact, words);
        }

        Verdict judge(boolean right) {
            return Limit.asItShould().judge(Found.of(right), Place.WHOLE_FLIGHT, () -> words);
        }

        Verdict judge(Length measured) {
            return limit.orElseThrow().judge(measured, Place.WHOLE_FLIGHT, () -> words);
        }
    }

    /** Something to be found as it should be. */
    static Look at(Fact fact, Function<Sights, Optional<Boolean>> which) {
        return (seen, demand) -> which.apply(seen).map(demand::judge).orElseGet(() -> demand.cannotTell(fact));
    }

    /** Something a tape is held to. */
    static Look along(Fact fact, Function<Sights, Optional<Length>> which) {
        return (seen, demand) -> which.apply(seen).map(demand::judge).orElseGet(() -> demand.cannotTell(fact));
    }

    /** Only a space that is closed and used is lined. */
    static Verdict atSpaceBelow(Sights seen, Demand demand) {
        if (seen.spaceBelowClosed().isEmpty()) {
            return demand.cannotTell(Fact.SPACE_BELOW);
        }
        return seen.spaceBelowClosed().get()
                ? along(Fact.LINING_BELOW, Sights::liningBelow).judge(seen, demand)
                : Verdict.doesNotApply("the space below is not closed and used");
    }

    /** Wood that may touch the ground may come as near to it as it likes. */
    static Verdict aboveSoil(Sights seen, Demand demand) {
        if (seen.treatedWood().orElse(false)) {
            return Verdict.doesNotApply("the wood at the foot may touch the ground");
        }
        Verdict found = along(Fact.WOOD_ABOVE_SOIL, Sights::woodAboveSoil).judge(seen, demand);
        return found instanceof Verdict.Fail && seen.treatedWood().isEmpty()
                ? Verdict.cannotTell(Fact.TREATED_WOOD, "say whether the wood at the foot is fit for the ground")
                : found;
    }

    /** As deep as the book asks, and as deep as frost goes. */
    static Verdict atFooting(Sights seen, Demand demand) {
        Verdict found = along(Fact.FOOTING_DEPTH, Sights::footingDepth).judge(seen, demand);
        if (!(found instanceof Verdict.Pass)) {
            return found;
        }
        if (seen.frostDepth().isEmpty()) {
            return Verdict.cannotTell(Fact.FROST_DEPTH, "ask the building office how deep frost goes here");
        }
        Length frost = seen.frostDepth().get();
        Length depth = seen.footingDepth().orElseThrow();
        return depth.isLessThan(frost)
                ? new Demand(Optional.of(Limit.atLeast(frost)), demand.words()).judge(depth)
                : found;
    }

    /** A door that is not the required way out. */
    static Verdict atOtherDoor(Sights seen, Demand demand) {
        if (seen.egressDoor().orElse(false)) {
            return Verdict.doesNotApply("the door is the required way out");
        }
        Verdict found = along(Fact.SILL_DROP, Sights::sillDrop).judge(seen, demand);
        return found instanceof Verdict.Fail && seen.egressDoor().isEmpty()
                ? Verdict.cannotTell(Fact.EGRESS_DOOR, "say whether the door is the required way out")
                : found;
    }
}
