package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * The posts of a guard.
 *
 * @param greatestSpacing level, from the middle of one post to the middle of the next
 * @param behindNosing from the nosing back to the front of the post, on every step alike; empty when the post stands
 *     with its middle over the middle of the run
 */
public record Posts(Section section, Length greatestSpacing, Fixing fixing, Optional<Length> behindNosing, Top top) {
    /** How a post is held at its foot. */
    public sealed interface Fixing {
        /** Against the outer face of the outer stringer. */
        record Lapped() implements Fixing {}

        /** Over the outer stringer, with a notch cut out of the post. */
        record Notched(Length depth) implements Fixing {}

        /** On the tread. */
        record SetOn() implements Fixing {}
    }

    /** How the top of a post is cut. */
    public enum Top {
        /** Level; the top rail is fitted between the posts. */
        SQUARE,
        /** Along the slope; the top rail runs over all posts. */
        UNDER_RAIL
    }
}
