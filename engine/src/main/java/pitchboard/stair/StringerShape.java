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

    private HeadFixing fixing() {
        return stair.brief().headFixing();
    }

    public Length boardDepth() {
        return stair.brief().stringers().stock().depth();
    }

    /** Plumb height of the board as it slopes: {@code d / cos}. */
    public Length plumbDepth() {
        return pitch().plumbForDepth(boardDepth());
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
        return topEdge(x).minus(plumbDepth());
    }

    /** Where the last level cut meets the header's face. */
    public Point headTop() {
        return Point.of(stair.headerFace(), stair.levelCut(stair.treads()));
    }

    /** Where the bottom edge meets the header's face, or the seat when the flight is lower than the board is deep. */
    public Point headBottom() {
        return lowestAt(stair.headerFace());
    }

    /** The lowest wood at this place: the bottom edge, or the seat where that is higher. */
    private Point lowestAt(Length x) {
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

    /** The back corner of the level cut at the foot: on the bottom edge, or under the head in a low flight. */
    public Point heel() {
        Length climb = stair.seat().minus(bottomEdge(Length.ZERO));
        return Point.of(Length.min(pitch().levelFor(climb), tail()), stair.seat());
    }

    /**
     * Where the bottom edge ends at the head: at the header's face, or in front of what is let in there. In a flight
     * lower than the board is deep it lies at the seat.
     */
    public Point headEnd() {
        return lowestAt(tail());
    }

    private Length tail() {
        boolean wholeFace = fixing() instanceof HeadFixing.HangerBoard board && !takesWholeCut(board);
        return wholeFace ? stair.headerFace() : stair.headerFace().minus(headNotchDepth());
    }

    /** How far what is let into the head reaches into the stringer; zero when the plumb cut stays whole. */
    Length headNotchDepth() {
        if (fixing() instanceof HeadFixing.HangerBoard board) {
            return board.thickness();
        }
        return fixing() instanceof HeadFixing.Ledger ledger ? ledger.thickness() : Length.ZERO;
    }

    /** Whether the hanger board is as high as the plumb cut, so that the whole cut moves back by its thickness. */
    public boolean takesWholeCut(HeadFixing.HangerBoard board) {
        return board.height().isAtLeast(plumbCut());
    }

    /** The whole outline, from the toe up the steps, down the head and back along the bottom edge. */
    public Outline outline() {
        return StringerOutline.of(this);
    }

    /** Top of what carries the head against the header: the hanger board, the ledger, or else the plumb cut itself. */
    public Length bearingTop() {
        return fixing() instanceof HeadFixing.Ledger ledger
                ? headBottom().y().plus(ledger.height())
                : headTop().y();
    }

    /** Foot of what carries the head against the header. */
    public Length bearingBottom() {
        return fixing() instanceof HeadFixing.HangerBoard board
                ? headTop().y().minus(board.height())
                : headBottom().y();
    }

    /** The header's upper edge: the decking lies on it. */
    public Length headerTop() {
        return stair.flight().totalRise().minus(stair.site().head().decking());
    }

    public Length headerBottom() {
        return headerTop().minus(stair.site().head().depth());
    }

    /** Plumb height in which what carries the head lies against the header; not positive when it misses it. */
    public Length contactHeight() {
        return Length.min(bearingTop(), headerTop()).minus(Length.max(bearingBottom(), headerBottom()));
    }
}
