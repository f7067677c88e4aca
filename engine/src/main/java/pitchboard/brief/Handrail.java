package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * The handrails that are wanted.
 *
 * @param height top of the rail plumb above the line of the nosings; empty when undecided
 * @param grip the section a hand closes on; empty when undecided
 * @param projection how far rail and brackets reach into the width; empty when undecided
 * @param clearance between rail and wall; empty when undecided or no wall
 * @param fullLength whether it runs from above the lowest riser to above the top riser with its ends returned
 * @param brackets the widest they may be apart on a wall; empty when undecided
 * @param past how far it goes on beyond the flight
 */
public record Handrail(
        Sides sides,
        Optional<Length> height,
        Optional<Grip> grip,
        Optional<Length> projection,
        Optional<Length> clearance,
        Optional<Boolean> fullLength,
        Optional<Length> brackets,
        Past past) {
    /**
     * How far a rail goes on beyond the flight, measured level.
     *
     * @param foot before the lowest nosing, at the slope of the flight
     * @param head behind the top nosing, level
     */
    public record Past(Length foot, Length head) {
        public static final Past NONE = new Past(Length.ZERO, Length.ZERO);
    }

    /** On which sides, seen by someone climbing. */
    public enum Sides {
        NONE(0),
        LEFT(1),
        RIGHT(1),
        BOTH(2);

        private final int count;

        Sides(int count) {
            this.count = count;
        }

        public int count() {
            return count;
        }

        public boolean isLeft() {
            return this == LEFT || this == BOTH;
        }

        public boolean isRight() {
            return this == RIGHT || this == BOTH;
        }
    }

    /** The section of the rail. */
    public sealed interface Grip {
        record Round(Length diameter) implements Grip {}

        /** A rectangle with rounded edges: its perimeter counts as the full rectangle. */
        record Rectangle(Length width, Length height) implements Grip {}

        /**
         * A thick rail with a recess for the fingers on both sides.
         *
         * @param section its width across and its height, over all
         * @param topWidth width above the recesses
         * @param edgeRadius to which its edges are eased
         */
        record Recessed(Rectangle section, Recess recess, Length topWidth, Length edgeRadius) implements Grip {}

        /**
         * Where the fingers go.
         *
         * @param start from the top of the rail down to where the recess begins
         * @param depth how far it reaches in from the side
         * @param height over which it keeps that depth
         */
        record Recess(Length start, Length depth, Length height) {}
    }
}
