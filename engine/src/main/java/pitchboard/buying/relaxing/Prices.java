package pitchboard.buying.relaxing;

/**
 * A worth for every kind of piece, and for every stock what the worthiest filling of one board is at most worth. However
 * the pieces are cut, the boards' yields add up to at least the worth of all pieces; so these whole numbers bound the
 * cost of every plan, whatever way they were come by.
 *
 * @param worth of one piece of each kind, zero or more
 * @param yield no filling of one board of the stock is worth more
 * @param cost of one board on the same scale; all zero to ask only whether the boards are enough
 * @param scale one unit of cost is so many of these
 */
@SuppressWarnings("ArrayRecordComponent") // read in the inner loops of the search, never compared
public record Prices(long[] worth, long[] yield, long[] cost, long scale) {
    /**
     * No plan for these pieces, with at least {@code least} and at most {@code most} boards of each stock, costs less;
     * scaled. When all costs are zero, more than zero means that there is no plan.
     */
    public long bound(int[] demand, int[] least, int[] most) {
        long sum = worthOf(demand);
        for (int stock = 0; stock < yield.length; stock++) {
            long each = cost[stock] - yield[stock];
            sum = Math.addExact(sum, Math.multiplyExact(each, (long) (each >= 0 ? least[stock] : most[stock])));
        }
        return sum;
    }

    /** What all the pieces are worth together. */
    public long worthOf(int[] demand) {
        long sum = 0;
        for (int kind = 0; kind < worth.length; kind++) {
            sum = Math.addExact(sum, Math.multiplyExact(worth[kind], (long) demand[kind]));
        }
        return sum;
    }

    /** How far the yields of these boards exceed the worth of these pieces; below zero when they are not enough. */
    public long spare(int[] demand, int[] boards) {
        long sum = -worthOf(demand);
        for (int stock = 0; stock < yield.length; stock++) {
            sum = Math.addExact(sum, Math.multiplyExact(yield[stock], (long) boards[stock]));
        }
        return sum;
    }
}
