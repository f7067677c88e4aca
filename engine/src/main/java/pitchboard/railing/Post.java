package pitchboard.railing;

import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/**
 * One post of a guard, seen from the side.
 *
 * @param number counted from 1 at the foot
 * @param step on which it stands
 * @param front of its faces the one toward the foot
 * @param back of its faces the one toward the head
 * @param foot height of its lower end, which is cut square
 * @param frontTop height of its top at the front face
 * @param backTop height of its top at the back face; the same as in front when the top is square
 */
public record Post(int number, int step, Length front, Length back, Length foot, Length frontTop, Length backTop) {
    /** From the foot to the highest corner. */
    public Length length() {
        return backTop.minus(foot);
    }

    public Length width() {
        return back.minus(front);
    }

    public Length middle() {
        return front.plus(back).dividedBy(2);
    }

    /** From the nosing of its step back to its front face, level. */
    public Length behindNosing(Stair stair) {
        return front.minus(stair.nosing(step).x());
    }

    /** Along a straight edge laid on the nosings, from the lowest nosing to the plumb line of the front face. */
    public Length alongStraightEdge(Stair stair) {
        return stair.pitch().alongForLevel(front.minus(stair.nosing(1).x()));
    }

    /** From the line of the nosings plumb up to the top, at the front face. */
    public Length aboveNosings(Stair stair) {
        return frontTop.minus(new RailLine(stair, Length.ZERO).at(front));
    }

    /** From the ground below plumb up to the highest corner. */
    public Length aboveGround(Stair stair) {
        return Ground.below(stair, new RailLine(stair, Length.ZERO).pointAt(back))
                .plus(backTop)
                .minus(new RailLine(stair, Length.ZERO).at(back));
    }
}
