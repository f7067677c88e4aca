package pitchboard.parts;

import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/** The check that the flight hangs square: two diagonals over the outer stringers that must agree. */
public final class Squareness {
    private Squareness() {}

    /**
     * From the first step's corner on one outer stringer to the last step's corner on the other, outside to outside.
     */
    public static Length diagonal(Stair stair) {
        int steps = stair.treads() - 1;
        return Length.diagonal(
                StringerSpacing.of(stair.brief()).overall(),
                stair.run().times(steps),
                stair.rise().times(steps));
    }
}
