package pitchboard.rules;

import java.util.Optional;
import pitchboard.plane.Point;

/**
 * Where on the stair a finding is.
 *
 * @param words such as {@code every step} or {@code under the edge of the loft floor}
 * @param point in the site frame, when it is one place on the side view
 */
public record Place(String words, Optional<Point> point) {
    public static final Place WHOLE_FLIGHT = named("the whole flight");
    public static final Place EVERY_STEP = named("every step");
    public static final Place HEAD = named("the head");
    public static final Place FOOT = named("the foot");

    public static Place at(String words, Point point) {
        return new Place(words, Optional.of(point));
    }

    public static Place named(String words) {
        return new Place(words, Optional.empty());
    }
}
