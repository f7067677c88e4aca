package pitchboard.parts;

import pitchboard.brief.Support;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.railing.Ground;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** Where the posts of a support meet the stringers and what lies below. */
public final class SupportPost {
    private SupportPost() {}

    /** The lower edge of the stringer over the post's face toward the foot, where it is shortest. */
    static Length lowTop(Stair stair, Support support) {
        return new StringerShape(stair).bottomEdge(front(support));
    }

    /** The same over the face toward the head. */
    static Length highTop(Stair stair, Support support) {
        return new StringerShape(stair).bottomEdge(front(support).plus(support.width()));
    }

    static Length front(Support support) {
        return support.at().minus(support.width().dividedBy(2));
    }

    /** What it stands on, as it is now. */
    static Length bottom(Stair stair, Support support) {
        Length middle = new StringerShape(stair).bottomEdge(support.at());
        return middle.minus(Ground.below(stair, Point.of(support.at(), middle)))
                .minus(stair.site().lowerFinish());
    }

    /** Its length at the long face, as it is cut; not positive where the stringer lies on the ground there. */
    public static Length height(Stair stair, Support support) {
        return highTop(stair, support).minus(bottom(stair, support));
    }
}
