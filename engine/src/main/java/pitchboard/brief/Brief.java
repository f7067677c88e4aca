package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/**
 * Everything that is wanted.
 *
 * @param width of the flight: the length of the treads
 * @param clearWidth between whatever stands beside the walking space; empty when it is the width itself
 * @param support under the stringers between foot and head; empty when there is none
 * @param joints what holds the stair together
 * @param use how the flight will be used, so that the rulebook's exemptions can be judged
 * @param strength what its strength is reckoned with
 */
public record Brief(
        Title title,
        HeadJoin headJoin,
        HeadFixing headFixing,
        FootDetail foot,
        Length width,
        Optional<Length> clearWidth,
        TreadMakeUp treads,
        Risers risers,
        Optional<Nosing> nosing,
        Stringers stringers,
        Handrail handrail,
        Guard guard,
        Wishes wishes,
        Use use,
        Optional<Support> support,
        Joints joints,
        Strength strength,
        Tape tape,
        Paper paper) {
    /** What the flight leads to. */
    public enum Use {
        /** An ordinary stair of a dwelling. */
        DWELLING,
        /** To an attic nobody lives in, or a crawl space. */
        STORAGE_OR_CRAWL_SPACE,
        /** Stands on the ground apart from any building. */
        FREE_STANDING
    }
}
