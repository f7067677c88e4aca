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
 */
public record Handrail(
        Sides sides,
        Optional<Length> height,
        Optional<Grip> grip,
        Optional<Length> projection,
        Optional<Length> clearance,
        Optional<Boolean> fullLength) {
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
    }
}
