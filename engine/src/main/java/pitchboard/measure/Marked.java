package pitchboard.measure;

/** A position as it is marked: the tape line, and the exact position it stands for. */
public record Marked(Length line, Length exact) {
    /** Rounds once, to the nearest line. */
    public static Marked of(Length exact, Graduation graduation) {
        return new Marked(exact.rounded(graduation), exact);
    }

    /** What rounding gave up: line minus exact, at most half a graduation either way. */
    public Length givenUp() {
        return line.minus(exact);
    }
}
