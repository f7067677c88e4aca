package pitchboard.buying.need;

import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;

/**
 * Two outlines alike in one board, the second turned end for end, so that head lies to head or foot to foot, whichever
 * takes less board.
 *
 * @param first where the first lies, its left end at 0
 * @param second where the second lies, to the right of the first
 * @param meeting the ends that lie side by side
 * @param extent of both together, along the board
 */
public record Nesting(Outline first, Outline second, Need.Ends meeting, Length extent) {
    /** Corners are taken to this line before the gap is worked out, and the gap is widened by more than that can be. */
    private static final Graduation FINE = Graduation.TENTH_MILLIMETRE;

    private static final Length SLACK = Length.mm(Ratio.of(1, 5));

    /**
     * The closest nesting with at least a kerf between the outlines, measured in any direction.
     *
     * @param kerf the wood one cut takes
     */
    public static Nesting of(Outline outline, Length kerf) {
        Nesting headToHead = beside(outline, turned(outline), Need.Ends.HEADS, kerf);
        Nesting footToFoot = beside(turned(outline), outline, Need.Ends.FEET, kerf);
        return footToFoot.extent.isLessThan(headToHead.extent) ? footToFoot : headToHead;
    }

    /** End for end: half a turn in the plane of the board, so that it still fills the board's depth. */
    private static Outline turned(Outline outline) {
        Length end = outline.greatest(Point::x);
        Length low = outline.least(Point::y).plus(outline.greatest(Point::y));
        return outline.mapped(corner -> Point.of(end.minus(corner.x()), low.minus(corner.y())));
    }

    private static Nesting beside(Outline left, Outline right, Need.Ends meeting, Length kerf) {
        long gap = tenths(kerf.plus(SLACK).roundedUp(FINE));
        long shift = Silhouette.of(left).clearOf(Silhouette.of(right), gap);
        Outline moved = right.mapped(corner -> corner.shifted(FINE.step().times(shift), Length.ZERO));
        return new Nesting(left, moved, meeting, moved.greatest(Point::x).minus(left.least(Point::x)));
    }

    static long tenths(Length length) {
        return length.rounded(FINE).wholeTimes(FINE.step());
    }
}
