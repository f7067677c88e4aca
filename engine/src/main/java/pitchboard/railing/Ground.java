package pitchboard.railing;

import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/** The floor or ground under the flight: level with the foot, or as the level-line readings have it. */
public final class Ground {
    private Ground() {}

    /** How high a place on the flight is above what lies plumb below it. */
    public static Length below(Stair stair, Point place) {
        Length totalRise = stair.site().totalRise(stair.headerFace().minus(place.x()));
        return place.y().minus(stair.flight().totalRise()).plus(totalRise);
    }
}
