package pitchboard.sheet.pictures;

import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The far edge of a stringer's board. */
final class BoardEdge {
    private BoardEdge() {}

    /** Square across the board from one of its corners. */
    static Point across(Stair stair, Point corner, Length depth) {
        return corner.shifted(
                stair.pitch().sinTimes(depth), stair.pitch().cosTimes(depth).negated());
    }

    /** Whether foot and head leave the edge standing there. */
    static boolean isWhole(StringerShape shape, Point edge) {
        return edge.y().isMoreThan(shape.toe().y())
                && edge.x().isLessThan(shape.headEnd().x());
    }
}
