package pitchboard.railing;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/**
 * A line along the flight, everywhere the same height above the line of the nosings.
 *
 * @param above plumb
 */
public record RailLine(Stair stair, Length above) {
    /** Its height at a place along the flight. */
    public Length at(Length x) {
        Point first = stair.nosing(1);
        return first.y().plus(stair.pitch().riseOver(x.minus(first.x()))).plus(above);
    }

    public Point pointAt(Length x) {
        return Point.of(x, at(x));
    }

    /** Plumb over every nosing, from the foot: all are the same, or the line is none. */
    public List<Length> overNosings() {
        return IntStream.rangeClosed(1, stair.treads())
                .mapToObj(stair::nosing)
                .map(nosing -> at(nosing.x()).minus(nosing.y()))
                .toList();
    }

    /** A line this much lower, measured plumb. */
    public RailLine lowered(Length plumb) {
        return new RailLine(stair, above.minus(plumb));
    }
}
