package pitchboard.buying.cutting;

/**
 * Boards of one length and price.
 *
 * @param length in ticks that pieces and kerfs may fill, end trims already taken off; more than zero
 * @param price of one, in the smallest coin; zero for a piece of the crew's own rack
 * @param onHand how many there are at most, {@link #NO_LIMIT} for as many as wanted
 */
public record Supply(long length, long price, int onHand) {
    public static final int NO_LIMIT = Integer.MAX_VALUE;

    public Supply {
        if (length <= 0) {
            throw new IllegalArgumentException("a board of length " + length);
        }
        if (price < 0) {
            throw new IllegalArgumentException("a price of " + price);
        }
        if (onHand < 0) {
            throw new IllegalArgumentException("on hand " + onHand);
        }
    }
}
