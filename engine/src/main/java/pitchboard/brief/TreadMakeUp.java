package pitchboard.brief;

import pitchboard.measure.Length;

/**
 * A tread is one board or several side by side.
 *
 * @param boards how many, 1 or more
 * @param boardWidth of each, as it measures, not as it is called
 * @param gap between neighbours; zero for a single board
 * @param thickness as it measures
 */
public record TreadMakeUp(int boards, Length boardWidth, Length gap, Length thickness) {
    /** From the back edge of the tread to its nosing. */
    public Length width() {
        return boards == 1 ? boardWidth : boardWidth.times(boards).plus(gap.times(boards - 1L));
    }
}
