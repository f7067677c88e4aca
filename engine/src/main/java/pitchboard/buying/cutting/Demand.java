package pitchboard.buying.cutting;

/**
 * Pieces of one length.
 *
 * @param length in ticks, more than zero
 * @param quantity one or more
 */
public record Demand(long length, int quantity) {
    public Demand {
        if (length <= 0) {
            throw new IllegalArgumentException("a piece of length " + length);
        }
        if (quantity <= 0) {
            throw new IllegalArgumentException("a piece wanted " + quantity + " times");
        }
    }
}
