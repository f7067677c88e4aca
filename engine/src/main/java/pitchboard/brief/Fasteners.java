package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;

/** Fasteners alike at one place of a joint: what a formula reckons, or what its maker lets one hold. */
public sealed interface Fasteners {
    /** How many there are at that place, 1 or more. */
    int number();

    /** What the trade calls them. */
    enum Kind {
        LAG_SCREW,
        WOOD_SCREW,
        NAIL,
        BOLT
    }

    /**
     * Fasteners that are known by their sizes.
     *
     * @param diameter of the shank; empty for a wood screw
     * @param gauge the number of a wood screw; empty for the others
     * @param length over all, under the head
     */
    record Sized(Kind kind, Optional<Length> diameter, Optional<Integer> gauge, Length length, int number)
            implements Fasteners {}

    /**
     * Fasteners or metal parts with a stated capacity, whatever they are.
     *
     * @param allowed what one may hold, above zero
     */
    record Rated(Reckoned allowed, int number) implements Fasteners {}
}
