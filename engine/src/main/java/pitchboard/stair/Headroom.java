package pitchboard.stair;

import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.site.Overhead;

/**
 * The clear height at one place.
 *
 * @param at the place on the walking line, in the site frame
 * @param clear plumb from there to the obstruction; negative when it is below
 */
public record Headroom(Overhead overhead, Point at, Length clear) {
    Headroom tighter(Headroom other) {
        return other.clear.isLessThan(clear) ? other : this;
    }
}
