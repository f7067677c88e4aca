package pitchboard.carry.elements;

import java.util.Optional;
import pitchboard.carry.members.StringerCase;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.elements.Support;

/**
 * Where a post bears under a stringer: as wide as the post is, on the slope of the lower edge.
 *
 * @param from level, its face toward the foot
 * @param to its face toward the head
 */
record PostFace(StringerShape shape, Length from, Length to) {
    /** Nothing where no post stands between foot and head. */
    static Optional<PostFace> under(Stair stair) {
        return StringerCase.of(stair)
                .supported()
                .flatMap(spans -> stair.brief().support())
                .map(post -> {
                    Length from = post.at().minus(post.width().dividedBy(2));
                    return new PostFace(new StringerShape(stair), from, from.plus(post.width()));
                });
    }

    /** Whether the lower edge is there over its whole width. */
    boolean bearsWhole() {
        return shape.heel().x().isLessThan(from)
                && to.isLessThan(shape.headEnd().x());
    }

    /** May turn and slide level; the post holds it plumb. */
    Support support() {
        return Support.roller(CutBoard.xy(edge(from)), CutBoard.xy(edge(to)));
    }

    private Point edge(Length x) {
        return Point.of(x, shape.bottomEdge(x));
    }
}
