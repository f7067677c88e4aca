package pitchboard.rules.kinds.surroundings;

import java.util.Optional;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.site.Sight;
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

        Verdict judge(Quantity measured) {
            return limit.orElseThrow().judge(measured, Place.WHOLE_FLIGHT, () -> words);
        }
    }

    /** Something to be found as it should be. */
    static Look at(Fact fact, Sight sight) {
        return (seen, demand) -> seen.isSo(sight).map(demand::judge).orElseGet(() -> demand.cannotTell(fact));
    }

    /** Something a tape is held to. */
    static Look along(Fact fact, Sight sight) {
        return (seen, demand) -> seen.length(sight).map(demand::judge).orElseGet(() -> demand.cannotTell(fact));
    }

    /** Something a level and a tape are held to. */
    static Look sloping(Fact fact, Sight sight) {
        return (seen, demand) -> seen.slope(sight).map(demand::judge).orElseGet(() -> demand.cannotTell(fact));
    }

    /** Only a space that is closed and used is lined. */
    static Verdict atSpaceBelow(Sights seen, Demand demand) {
        if (seen.isSo(Sight.SPACE_BELOW_CLOSED).isEmpty()) {
            return demand.cannotTell(Fact.SPACE_BELOW);
        }
        return seen.isSo(Sight.SPACE_BELOW_CLOSED).get()
                ? along(Fact.LINING_BELOW, Sight.LINING_BELOW).judge(seen, demand)
                : Verdict.doesNotApply("the space below is not closed and used");
    }

    /** Wood that may touch the ground may come as near to it as it likes. */
    static Verdict aboveSoil(Sights seen, Demand demand) {
        if (seen.isSo(Sight.TREATED_WOOD).orElse(false)) {
            return Verdict.doesNotApply("the wood at the foot may touch the ground");
        }
        Verdict found = along(Fact.WOOD_ABOVE_SOIL, Sight.WOOD_ABOVE_SOIL).judge(seen, demand);
        return found instanceof Verdict.Fail && seen.isSo(Sight.TREATED_WOOD).isEmpty()
                ? Verdict.cannotTell(Fact.TREATED_WOOD, "say whether the wood at the foot is fit for the ground")
                : found;
    }

    /** As deep as the book asks, and as deep as frost goes. */
    static Verdict atFooting(Sights seen, Demand demand) {
        Verdict found = along(Fact.FOOTING_DEPTH, Sight.FOOTING_DEPTH).judge(seen, demand);
        if (!(found instanceof Verdict.Pass)) {
            return found;
        }
        if (seen.length(Sight.FROST_DEPTH).isEmpty()) {
            return Verdict.cannotTell(Fact.FROST_DEPTH, "ask the building office how deep frost goes here");
        }
        Length frost = seen.length(Sight.FROST_DEPTH).get();
        Length depth = seen.length(Sight.FOOTING_DEPTH).orElseThrow();
        return depth.isLessThan(frost)
                ? new Demand(Optional.of(Limit.atLeast(frost)), demand.words()).judge(depth)
                : found;
    }

    /** Only a bottom step that follows the ground needs one. */
    static Verdict atStripe(Sights seen, Demand demand) {
        return seen.slope(Sight.GROUND_ALONG_RISER).filter(Ratio::isZero).isPresent()
                ? Verdict.doesNotApply("the ground along the bottom riser is level")
                : along(Fact.END_RISE_STRIPE, Sight.END_RISE_STRIPE).judge(seen, demand);
    }

    /** A door that is not the required way out. */
    static Verdict atOtherDoor(Sights seen, Demand demand) {
        if (seen.isSo(Sight.EGRESS_DOOR).orElse(false)) {
            return Verdict.doesNotApply("the door is the required way out");
        }
        Verdict found = along(Fact.SILL_DROP, Sight.SILL_DROP).judge(seen, demand);
        return found instanceof Verdict.Fail && seen.isSo(Sight.EGRESS_DOOR).isEmpty()
                ? Verdict.cannotTell(Fact.EGRESS_DOOR, "say whether the door is the required way out")
                : found;
    }
}
