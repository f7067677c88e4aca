package pitchboard.buying.search;

import java.util.ArrayDeque;
import java.util.Deque;

/** Prices kept from one part of the search to the next: each bounds the cost of every part, for the price of a sum. */
final class Cuts {
    private static final int KEPT = 400;

    private final Model model;
    private final Deque<Prices> kept = new ArrayDeque<>();

    Cuts(Model model) {
        this.model = model;
    }

    void add(Prices prices) {
        kept.addFirst(prices);
        if (kept.size() > KEPT) {
            kept.removeLast();
        }
    }

    /**
     * Narrows the bounds on boards to what a plan cheaper than the limit can have.
     *
     * @param least narrowed in place, like {@code most}
     * @return what no such plan undercuts; the limit when there is none
     */
    long tighten(int[] least, int[] most, long start, long limit) {
        long bound = start;
        boolean again = true;
        while (again) {
            again = false;
            for (Prices prices : kept) {
                long sum = prices.bound(model.demand, least, most);
                if (!prices.onlyEnough()) {
                    bound = Math.max(bound, roundedUp(-Math.floorDiv(-sum, prices.scale()), least));
                } else if (sum > 0) {
                    return limit;
                }
                if (bound >= limit) {
                    return limit;
                }
                long top = prices.onlyEnough() ? 0 : Math.multiplyExact(limit - 1, prices.scale());
                again |= narrow(prices, least, most, top - sum);
            }
        }
        return bound;
    }

    /** The next cost that prices can add up to, with no fewer boards than these. */
    long roundedUp(long bound, int[] least) {
        long prices = Math.floorDiv(bound, model.boardWeight);
        long whole = -Math.floorDiv(-prices, model.coin) * model.coin;
        if (whole == prices) {
            return bound;
        }
        long boards = 0;
        for (int stock = 0; stock < least.length; stock++) {
            boards += model.isFree(stock) ? 0 : least[stock];
        }
        return whole * model.boardWeight + boards;
    }

    /** Takes away what alone would lift the bound by more than the slack. */
    private static boolean narrow(Prices prices, int[] least, int[] most, long slack) {
        boolean changed = false;
        for (int stock = 0; stock < least.length; stock++) {
            long each = prices.each(stock);
            if (each == 0 || least[stock] == most[stock]) {
                continue;
            }
            long steps = slack / Math.abs(each);
            if (steps < most[stock] - least[stock]) {
                changed = true;
                if (each > 0) {
                    most[stock] = least[stock] + (int) steps;
                } else {
                    least[stock] = most[stock] - (int) steps;
                }
            }
        }
        return changed;
    }
}
