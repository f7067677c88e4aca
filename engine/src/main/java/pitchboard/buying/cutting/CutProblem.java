package pitchboard.buying.cutting;

import java.util.List;

/**
 * Which boards to take, and what to cut from each, so that every piece is cut and the boards cost least. Pieces come off
 * one board if their lengths and the kerfs between them fit: {@code n} pieces need {@code n - 1} kerfs, and one more
 * where something is left over.
 *
 * @param kerf wood lost to one saw cut, in ticks, zero or more
 */
public record CutProblem(List<Demand> demands, List<Supply> supplies, long kerf) {
    /** All pieces with their kerfs are together shorter than this, in ticks, so that sums of them stay exact. */
    public static final long MOST_TICKS = 1L << 30;

    /** More pieces than this are more than one plan can hold. */
    public static final int MOST_PIECES = 1 << 14;

    /** No board costs more, in the smallest coin, so that sums of prices stay exact. */
    public static final long MOST_PRICE = 1L << 30;

    public CutProblem {
        demands = List.copyOf(demands);
        supplies = List.copyOf(supplies);
        if (kerf < 0) {
            throw new IllegalArgumentException("a kerf of " + kerf);
        }
        long ticks = 0;
        long pieces = 0;
        for (Demand demand : demands) {
            pieces += demand.quantity();
            ticks = Math.addExact(
                    ticks, Math.multiplyExact(Math.addExact(demand.length(), kerf), (long) demand.quantity()));
        }
        if (ticks >= MOST_TICKS) {
            throw new IllegalArgumentException("pieces of " + ticks + " ticks together; use a coarser tick");
        }
        if (pieces > MOST_PIECES) {
            throw new IllegalArgumentException(pieces + " pieces are more than " + MOST_PIECES);
        }
        for (Supply supply : supplies) {
            if (supply.price() > MOST_PRICE) {
                throw new IllegalArgumentException("a price of " + supply.price() + " is more than " + MOST_PRICE);
            }
        }
    }

    public int pieces() {
        return demands.stream().mapToInt(Demand::quantity).sum();
    }
}
