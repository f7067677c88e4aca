package pitchboard.measure;

/** A number of things: risers, treads, rails. */
public record Count(int value) implements Quantity, Comparable<Count> {
    @Override
    public int compareTo(Count other) {
        return Integer.compare(value, other.value);
    }
}
