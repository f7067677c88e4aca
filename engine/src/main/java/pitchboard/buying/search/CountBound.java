package pitchboard.buying.search;

import java.math.BigInteger;
import pitchboard.buying.relaxing.Model;

/**
 * What the kept prices alone say about the cost of every plan with so many boards of each stock. The multipliers that
 * {@link CountProgram} found in doubles are rounded to whole numbers, and the lines added up in whole numbers: any
 * multiples, zero or more, of lines that hold add up to one that holds, so the bound is sure whatever the doubles did.
 */
final class CountBound {
    private static final int BITS = 50;
    private static final int MOST_BITS = 200;

    private final Model model;
    private final KeptPrices kept;
    private final CountProgram program;
    private final double[] counts;
    private final long[] nothing;
    private int[] least = {};
    private int[] most = {};

    CountBound(Model model, KeptPrices kept) {
        this.model = model;
        this.kept = kept;
        program = new CountProgram(model, kept);
        counts = new double[model.stocks()];
        nothing = new long[model.stocks()];
    }

    /** The cheapest counts found last, in fractions, within the bounds as they were narrowed. */
    double[] counts() {
        return counts;
    }

    /** How much work was done in all; so many exchanges in small dictionaries. */
    int work() {
        return program.pivots();
    }

    /**
     * Bounds the cost of every plan with at least and at most so many boards, and takes away from these what no plan
     * cheaper than the limit can have.
     *
     * @param fewest narrowed in place, like {@code greatest}
     * @return what no such plan undercuts, in units of the model's cost; the limit when none is cheaper, or there is none
     */
    long bound(int[] fewest, int[] greatest, long limit) {
        least = fewest;
        most = greatest;
        int impossible = program.run(least, most);
        program.counts(counts);
        if (impossible >= 0 && sum(program.refutation(impossible), nothing, 1) > 0) {
            return limit;
        }
        long bound = impossible >= 0 ? 0 : sum(program.multipliers(), model.cost, limit);
        for (int stock = 0; stock < counts.length; stock++) {
            counts[stock] = Math.max(least[stock], Math.min(counts[stock], most[stock]));
        }
        return Math.min(limit, roundedUp(bound));
    }

    /** What these multiples of the lines, and the bounds on the counts, say that the cost is at least. */
    private long sum(double[] multiplier, long[] cost, long limit) {
        double largest = 0;
        for (int line = 0; line < multiplier.length; line++) {
            multiplier[line] /= kept.get(line).largest();
            largest = Math.max(largest, multiplier[line]);
        }
        int bits = BITS - (largest > 0 ? Math.getExponent(largest) : 0);
        if (bits > MOST_BITS || bits < 0) {
            return 0;
        }
        BigInteger[] each = new BigInteger[cost.length];
        for (int stock = 0; stock < each.length; stock++) {
            each[stock] = BigInteger.valueOf(cost[stock]).shiftLeft(bits);
        }
        BigInteger sum = BigInteger.ZERO;
        for (int line = 0; line < multiplier.length; line++) {
            long times = (long) Math.scalb(multiplier[line], bits);
            if (times > 0) {
                BigInteger by = BigInteger.valueOf(times);
                sum = sum.add(by.multiply(BigInteger.valueOf(kept.get(line).worth())));
                subtract(each, kept.get(line).prices().yield(), by);
            }
        }
        for (int stock = 0; stock < each.length; stock++) {
            int count = each[stock].signum() >= 0 ? least[stock] : most[stock];
            sum = sum.add(each[stock].multiply(BigInteger.valueOf(count)));
        }
        BigInteger slack = BigInteger.valueOf(limit - 1).shiftLeft(bits).subtract(sum);
        if (slack.signum() < 0) {
            return limit;
        }
        narrow(each, slack);
        return Math.max(0, sum.negate().shiftRight(bits).negate().longValue());
    }

    private static void subtract(BigInteger[] each, long[] yield, BigInteger by) {
        for (int stock = 0; stock < each.length; stock++) {
            each[stock] = each[stock].subtract(by.multiply(BigInteger.valueOf(yield[stock])));
        }
    }

    /** Takes away what alone would lift the sum by more than the slack. */
    private void narrow(BigInteger[] each, BigInteger slack) {
        for (int stock = 0; stock < each.length; stock++) {
            BigInteger span = BigInteger.valueOf(most[stock] - least[stock]);
            if (each[stock].abs().multiply(span).compareTo(slack) > 0) {
                int steps = slack.divide(each[stock].abs()).intValue();
                if (each[stock].signum() > 0) {
                    most[stock] = least[stock] + steps;
                } else {
                    least[stock] = most[stock] - steps;
                }
            }
        }
    }

    /** The next cost that prices can add up to, with no fewer boards than these. */
    private long roundedUp(long bound) {
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
}
