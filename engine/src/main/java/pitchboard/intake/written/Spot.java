package pitchboard.intake.written;

/**
 * A place in a text.
 *
 * @param line counted from 1; 0 for what stands in no text
 * @param column counted from 1; 0 for what stands in no text
 */
public record Spot(int line, int column) implements Comparable<Spot> {
    public static final Spot NOWHERE = new Spot(0, 0);
    public static final Spot START = new Spot(1, 1);

    /** So many characters further along the same line. */
    public Spot right(int columns) {
        return line == 0 ? this : new Spot(line, column + columns);
    }

    @Override
    public int compareTo(Spot other) {
        return line == other.line ? Integer.compare(column, other.column) : Integer.compare(line, other.line);
    }
}
