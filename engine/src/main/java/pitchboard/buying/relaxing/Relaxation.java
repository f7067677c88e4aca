package pitchboard.buying.relaxing;

import java.util.ArrayList;
import java.util.List;

/**
 * The linear relaxation over all patterns: runs the simplex, prices every filling of every stock with the duals, adds the
 * worthiest, and runs again until none helps. Every round of prices also bounds the cost in whole numbers.
 */
public final class Relaxation {
    private static final int SCALE_BITS = 40;
    private static final long WORTHWHILE = (1L << SCALE_BITS) / 1_000_000_000;
    private static final int KINDS_A_PATTERN = 20;

    private final Model model;
    public final Patterns patterns = new Patterns();
    public final Simplex simplex;
    private final Filling filling;
    private final long scale;
    private final long highest;

    /** The prices of the last run that bounded best, and all prices that ended a run. */
    private Prices prices;

    private long bound;
    private final Effort effort;

    /** The effort of one exchange in the simplex. */
    private final long exchange;

    public Relaxation(Model model, Effort effort) {
        this.model = model;
        this.effort = effort;
        exchange = 1 + (long) (model.kinds() + model.stocks()) * (model.kinds() + model.stocks()) / 2000;
        filling = new Filling(model);
        long most = 1;
        for (long each : model.cost) {
            most = Math.max(most, each);
        }
        highest = most;
        scale = Math.max(1, Long.highestOneBit((1L << SCALE_BITS) / most));
        for (int stock = 0; stock < model.stocks(); stock++) {
            patterns.add(Pattern.empty(stock));
        }
        simplex = new Simplex(model, patterns);
    }

    public enum Answer {
        /** The simplex holds a solution, best to the accuracy of doubles; the bound is sure. */
        SOLVED,
        /** Every plan costs at least the limit, or there is none: sure. */
        OVER,
        /** The bound is sure, but the simplex got stuck. */
        STUCK
    }

    /** What no plan within the last question's bounds undercuts, in units of the model's cost. */
    public long bound() {
        return bound;
    }

    /** The prices that gave the bound. */
    public Prices prices() {
        return prices;
    }

    public Answer solve(int[] demand, int[] least, int[] most, long limit) {
        simplex.ask(demand, least, most);
        bound = 0;
        prices = null;
        while (!effort.isSpent()) {
            int before = simplex.steps();
            boolean done = simplex.run();
            effort.spend(1 + exchange * (simplex.steps() - before));
            boolean isShort = simplex.isInfeasible();
            Prices next = price(demand, isShort);
            long sure = next.bound(demand, least, most);
            if (isShort && sure > 0) {
                prices = next;
                return Answer.OVER;
            }
            if (!isShort) {
                long rounded = -Math.floorDiv(-sure, scale);
                if (prices == null || rounded >= bound) {
                    prices = next;
                    bound = rounded;
                }
                if (bound >= limit) {
                    return Answer.OVER;
                }
            }
            boolean better = false;
            for (Pattern pattern : found) {
                better |= patterns.add(pattern);
            }
            if (!better) {
                return done && !isShort ? Answer.SOLVED : Answer.STUCK;
            }
        }
        return Answer.STUCK;
    }

    private final List<Pattern> found = new ArrayList<>();

    /** Turns the duals into prices, and keeps the fillings worth more than their board. */
    private Prices price(int[] demand, boolean isShort) {
        int kinds = model.kinds();
        int stocks = model.stocks();
        double factor = isShort ? (1L << SCALE_BITS) / largestDual() : (double) highest * scale;
        long[] worth = new long[kinds];
        for (int kind = 0; kind < kinds; kind++) {
            worth[kind] = (long) Math.max(0, Math.floor(simplex.dual[kind] * factor));
        }
        long[] cost = new long[stocks];
        long[] threshold = new long[stocks];
        for (int stock = 0; stock < stocks; stock++) {
            cost[stock] = isShort ? 0 : model.cost[stock] * scale;
            threshold[stock] = Math.max(0, (long) Math.floor(-simplex.dual[kinds + stock] * factor));
        }
        long[] yield = filling.search(worth, demand, threshold);
        found.clear();
        keepFound(yield, threshold);
        moreOf(worth, demand, threshold);
        return new Prices(worth, yield, cost, isShort ? 1 : scale);
    }

    private void keepFound(long[] yield, long[] threshold) {
        effort.spend(filling.work() / 1000);
        for (int stock = 0; stock < yield.length; stock++) {
            if (yield[stock] > threshold[stock] + WORTHWHILE) {
                found.add(filling.pattern(stock));
            }
        }
    }

    /** With many kinds one pattern a round is slow going: more, each without the pieces of those before. */
    private void moreOf(long[] worth, int[] demand, long[] threshold) {
        int[] left = demand.clone();
        int before = 0;
        for (int more = model.kinds() / KINDS_A_PATTERN; more > 0 && found.size() > before; more--) {
            for (Pattern pattern : found.subList(before, found.size())) {
                for (int i = 0; i < pattern.kinds().length; i++) {
                    left[pattern.kinds()[i]] = Math.max(0, left[pattern.kinds()[i]] - pattern.counts()[i]);
                }
            }
            before = found.size();
            keepFound(filling.search(worth, left, threshold), threshold);
        }
    }

    private double largestDual() {
        double largest = 1e-9;
        for (double each : simplex.dual) {
            largest = Math.max(largest, Math.abs(each));
        }
        return largest;
    }
}
