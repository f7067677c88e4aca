package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Supply;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Prices;

/** Against trying every count of three stocks: the bound undercuts none, and no count worth having is taken away. */
final class CountBoundLawsTest {
    private static final int MOST = 9;
    private static final int NO_COUNTS = 1 << 28;

    private static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_bound_holds_for_every_count(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Model model = new Model(new CutProblem(
                List.of(new Demand(40, MOST)),
                List.of(
                        new Supply(50, 100 + random.nextInt(100), MOST),
                        new Supply(90, 200 + random.nextInt(100), MOST),
                        new Supply(140, 300 + random.nextInt(100), MOST)),
                0));
        KeptPrices kept = new KeptPrices(model);
        Prices[] lines = new Prices[1 + random.nextInt(6)];
        for (int line = 0; line < lines.length; line++) {
            long[] yield = random.longs(3, 0, 1L << 40).toArray();
            lines[line] = new Prices(new long[] {random.nextLong(1L << 39)}, yield, model.cost, 1);
            kept.add(lines[line]);
        }
        int[] least = random.ints(3, 0, 4).toArray();
        int[] most = {least[0] + random.nextInt(6), least[1] + random.nextInt(6), least[2] + random.nextInt(6)};
        int[] low = least.clone();
        int[] high = most.clone();
        long cheapest = cheapest(model, lines, least, most, new int[3], 0);
        long limit = random.nextBoolean() ? NO_COUNTS : cheapest + random.nextInt(900);
        long bound = new CountBound(model, kept).bound(low, high, limit);
        assertThat(bound).isLessThanOrEqualTo(limit);
        if (cheapest < Math.min(limit, NO_COUNTS)) {
            assertThat(bound).isLessThanOrEqualTo(cheapest);
            assertThat(cheapest(model, lines, low, high, new int[3], 0)).isEqualTo(cheapest);
        }
    }

    /** Where one line alone counts, and a fraction would do, the bound is that fraction's. */
    @ParameterizedTest
    @MethodSource("seeds")
    void one_line_alone_is_bounded_by_its_best_ratio(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int price = 100 + random.nextInt(900);
        Model model = new Model(new CutProblem(List.of(new Demand(40, MOST)), List.of(new Supply(50, price, MOST)), 0));
        KeptPrices kept = new KeptPrices(model);
        long yield = 1 + random.nextLong(1L << 40);
        kept.add(new Prices(new long[] {random.nextLong(yield)}, new long[] {yield}, model.cost, 1));
        double counts = (double) kept.get(0).worth() / yield;
        long bound = new CountBound(model, kept).bound(new int[] {0}, new int[] {MOST}, NO_COUNTS);
        assertThat((double) bound).isGreaterThanOrEqualTo(counts * model.cost[0] - 1e-6);
        assertThat((double) bound).isLessThanOrEqualTo(counts * model.cost[0] + model.boardWeight * price);
    }

    private static long cheapest(Model model, Prices[] lines, int[] least, int[] most, int[] counts, int stock) {
        if (stock == counts.length) {
            boolean fits = Arrays.stream(lines).allMatch(line -> line.spare(model.demand, counts) >= 0);
            long cost = 0;
            for (int each = 0; each < counts.length; each++) {
                cost += counts[each] * model.cost[each];
            }
            return fits ? cost : NO_COUNTS;
        }
        long cheapest = NO_COUNTS;
        for (int count = least[stock]; count <= most[stock]; count++) {
            counts[stock] = count;
            cheapest = Math.min(cheapest, cheapest(model, lines, least, most, counts, stock + 1));
        }
        return cheapest;
    }
}
