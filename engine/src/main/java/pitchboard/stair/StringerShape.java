package pitchboard.stair;

import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;

/**
 * Where a stringer's cuts and edges lie, in the site frame, as long as the stair is buildable.
 *
 * <p>The corners of the steps lie on the board's top edge; its bottom edge is parallel, one board depth below.
 */
public record StringerShape(Stair stair) {
    private Pitch pitch() {
        return stair.pitch();
    }

    public Length boardDepth() {
        return stair.brief().stringers().stock().depth();
    }

    /** How deep a step is cut into the board, square to its edge: {@code r·g / √(r² + g²)}. */
    public Length notchDepth() {
        return pitch().cosTimes(stair.rise());
    }

    /** The wood left under every step, square to the edge: {@code d − r·g / √(r² + g²)}. */
    public Length throat() {
        return boardDepth().minus(notchDepth());
    }

    /** Height of the board's top edge, on which the step corners lie. */
    public Length topEdge(Length x) {
        return stair.levelCut(1).plus(pitch().riseOver(x));
    }

    /** Height of the board's bottom edge. */
    public Length bottomEdge(Length x) {
        return topEdge(x).minus(pitch().plumbForDepth(boardDepth()));
    }

    /** Where the last level cut meets the header's face. */
    public Point headTop() {
        return Point.of(stair.headerFace(), stair.levelCut(stair.treads()));
    }

    /** Where the bottom edge meets the header's face, or the seat when the flight is lower than the board is deep. */
    public Point headBottom() {
        Length x = stair.headerFace();
        return Point.of(x, Length.max(bottomEdge(x), stair.seat()));
    }

    /** Height of the plumb cut at the header's face, before anything is let into it. */
    public Length plumbCut() {
        return headTop().y().minus(headBottom().y());
    }

    /** The front lower corner of the level cut at the foot, before a kicker is let in. */
    public Point toe() {
        return Point.of(Length.ZERO, stair.seat());
    }

    /** The back corner of the level cut at the foot. */
    public Point heel() {
        Length climb = stair.seat().minus(bottomEdge(Length.ZERO));
        Length x = Length.min(pitch().levelFor(climb), lowestHeadX());
        return Point.of(x, stair.seat());
    }

    private Length lowestHeadX() {
        Length face = stair.headerFace();
        boolean cutOff = stair.brief().headFixing() instanceof HeadFixing.HangerBoard board && takesWholeCut(board);
        return cutOff ? face.minus(((HeadFixing.HangerBoard) stair.brief().headFixing()).thickness()) : face;
    }

    /** Whether the hanger board is as high as the plumb cut, so that the whole cut moves back by its thickness. */
    public boolean takesWholeCut(HeadFixing.HangerBoard board) {
        return board.height().isAtLeast(plumbCut());
    }

    /** The whole outline, from the toe up the steps, down the head and back along the bottom edge. */
    public Outline outline() {
        return StringerOutline.of(this);
    }

    /** Plumb height in which the head's cut, or the hanger board let into it, touches the header. */
    public Length contactHeight() {
        Length headerTop = stair.flight().totalRise().minus(stair.site().head().decking());
        Length headerBottom = headerTop.minus(stair.site().head().depth());
        Length bottom = stair.brief().headFixing() instanceof HeadFixing.HangerBoard board
                ? headTop().y().minus(board.height())
                : headBottom().y();
        return Length.min(headTop().y(), headerTop).minus(Length.max(bottom, headerBottom));
    }
}
