package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.PlanChecker;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Supply;

/**
 * Ten drawn stairs bought together: some forty lengths from seven lengths of board. The costs are our own, found and
 * proved by two ways of searching (2026-11-29); no other solver closed problems of this size.
 */
final class TenStairsTest {
    private static final double[] PER_FOOT = {1, 1, 1, 1.02, 1.05, 1.12, 1.2};

    @ParameterizedTest
    @CsvSource(textBlock = """
            # seed, cost, boards
            1, 172621, 130
            2, 256526, 118
            """)
    void the_cheapest_plan_is_proved(long seed, long cost, int boards) {
        CutProblem problem = tenStairs(seed);
        CutPlan plan = ((PlanOutcome.Planned) Planner.plan(problem, Planner.USUAL_EFFORT)).plan();
        assertThat(PlanChecker.faults(problem, plan, cost)).isEmpty();
        assertThat(plan.proof().cheapest()).isTrue();
        assertThat(plan.proof().fewest()).isTrue();
        assertThat(plan.bought(problem)).isEqualTo(boards);
    }

    /** Two boards to a tread, three stringers, a ledger, here and there posts; lengths in sixteenths of an inch. */
    private static CutProblem tenStairs(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Demand> demands = new ArrayList<>();
        for (int stair = 0; stair < 10; stair++) {
            int treads = random.nextInt(8, 15);
            long width = 16L * random.nextInt(32, 46) + 4L * random.nextInt(4);
            demands.add(new Demand(width, 2 * treads + 2));
            demands.add(new Demand(16L * treads * 12 + random.nextInt(16 * 16), 3));
            demands.add(new Demand(width - 48, 1));
            int posts = random.nextInt(8);
            if (posts > 0) {
                demands.add(new Demand(16L * random.nextInt(38, 56), posts));
                demands.add(new Demand(16L * random.nextInt(5, 20) + 2, 3 * posts));
            }
        }
        List<Supply> supplies = new ArrayList<>();
        long foot = random.nextInt(90, 260);
        for (int i = 0; i < PER_FOOT.length; i++) {
            int feet = 8 + 2 * i;
            supplies.add(new Supply(feet * 192L + 8, (long) (foot * feet * PER_FOOT[i] + 0.5), Supply.NO_LIMIT));
        }
        return new CutProblem(demands, supplies, 2);
    }
}
