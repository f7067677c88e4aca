package pitchboard.railing;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/**
 * A handrail from over the lowest nosing to over the top riser, and on past both as far as is wanted: before the foot
 * at the slope, behind the head level.
 *
 * @param height of its top plumb above the line of the nosings
 */
public record HandrailRun(Stair stair, Handrail.Past past, Length height) {
    /** Empty when no rail is wanted or its height is undecided. */
    public static Optional<HandrailRun> find(Stair stair) {
        Handrail rail = stair.brief().handrail();
        return rail.height()
                .filter(height -> rail.sides() != Handrail.Sides.NONE)
                .map(height -> new HandrailRun(stair, rail.past(), height));
    }

    /** Its top from the foot: where it begins, over the top riser, and where it ends when it goes on level. */
    public List<Point> line() {
        RailLine line = new RailLine(stair, height);
        Point begin = line.pointAt(stair.nosing(1).x().minus(past.foot()));
        Point overTop = line.pointAt(stair.nosing(stair.flight().risers()).x());
        return past.head().isZero()
                ? List.of(begin, overTop)
                : List.of(begin, overTop, overTop.shifted(past.head(), Length.ZERO));
    }

    /** The sloping piece. */
    public Length onSlope() {
        Length level = stair.run().times(stair.flight().risers() - 1L).plus(past.foot());
        return stair.pitch().alongForLevel(level);
    }

    /** All of it along its top. */
    public Length length() {
        return onSlope().plus(past.head());
    }
}
