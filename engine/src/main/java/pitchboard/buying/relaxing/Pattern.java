package pitchboard.buying.relaxing;

/**
 * One way to fill a board: how many pieces of which kinds. Lists only the kinds it has.
 *
 * @param stock the kind of board
 * @param kinds of piece, in growing order
 * @param counts of each of these kinds, one or more
 */
@SuppressWarnings("ArrayRecordComponent") // read in the inner loops of the search, never compared
public record Pattern(int stock, int[] kinds, int[] counts) {
    private static final int[] NONE = {};

    static Pattern empty(int stock) {
        return new Pattern(stock, NONE, NONE);
    }

    public boolean isEmpty() {
        return kinds.length == 0;
    }
}
