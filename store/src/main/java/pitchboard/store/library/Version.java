package pitchboard.store.library;

import java.time.Instant;

/**
 * A job as it was saved once. Versions are never changed and never taken away.
 *
 * @param number from 1, without gaps
 * @param saved to the millisecond, by the clock of the machine that keeps the library
 */
public record Version(int number, Instant saved, By by, Draft draft) {
    /** The same without its text. */
    public Line line() {
        return new Line(number, saved, by);
    }

    /** A version in a list of versions. */
    public record Line(int number, Instant saved, By by) {}
}
