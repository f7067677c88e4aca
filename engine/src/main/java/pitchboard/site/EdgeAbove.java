package pitchboard.site;

import pitchboard.measure.Length;

/**
 * How much of the upper floor's edge beside the flight is open, measured along the edge from the end of the treads.
 *
 * @param left of someone climbing; zero where a wall stands or something guards the edge already
 * @param right the same on the other side
 */
public record EdgeAbove(Length left, Length right) {
    public Length on(Hand hand) {
        return hand == Hand.LEFT ? left : right;
    }

    /** Whether some of it is open. */
    public boolean isOpen() {
        return left.isPositive() || right.isPositive();
    }
}
