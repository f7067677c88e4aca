package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Prices;

/**
 * Prices kept from one part of the search to the next. Each is a line over the counts of boards: the yields of the boards
 * of a plan add up to at least the worth of all pieces.
 */
final class KeptPrices {
    private static final int KEPT = 400;

    private final Model model;
    private final List<Line> lines = new ArrayList<>();

    KeptPrices(Model model) {
        this.model = model;
    }

    /**
     * @param prices as they were learnt
     * @param worth of all pieces
     * @param share yields and worth, divided by {@code largest}, for doubles to calculate with; the worth comes last
     * @param largest of the yields
     */
    @SuppressWarnings("ArrayRecordComponent") // read in the inner loops of the search, never compared
    record Line(Prices prices, long worth, double[] share, double largest) {}

    void add(Prices prices) {
        double largest = 1;
        for (long each : prices.yield()) {
            largest = Math.max(largest, (double) each);
        }
        long worth = prices.worthOf(model.demand);
        double[] share = new double[model.stocks() + 1];
        for (int stock = 0; stock < model.stocks(); stock++) {
            share[stock] = (double) prices.yield()[stock] / largest;
        }
        share[model.stocks()] = (double) worth / largest;
        if (lines.size() == KEPT) {
            lines.remove(0);
        }
        lines.add(new Line(prices, worth, share, largest));
    }

    int size() {
        return lines.size();
    }

    Line get(int line) {
        return lines.get(line);
    }

    /** Of all kept, those that leave the least to spare with these boards. */
    List<Prices> tightest(int[] boards, int some) {
        List<Line> sorted = new ArrayList<>(lines);
        sorted.sort(Comparator.comparingDouble(line -> line.prices().spare(model.demand, boards) / line.largest()));
        return sorted.stream().limit(some).map(Line::prices).toList();
    }
}
