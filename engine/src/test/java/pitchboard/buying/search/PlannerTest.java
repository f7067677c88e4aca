package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Supply;

/** Problems small enough to be worked by hand, and the edges. */
final class PlannerTest {
    private static final Supply EIGHT = new Supply(96, 800, Supply.NO_LIMIT);
    private static final Supply TEN = new Supply(120, 1100, Supply.NO_LIMIT);

    private static PlanOutcome outcome(List<Demand> demands, List<Supply> supplies, long kerf) {
        return Planner.plan(new CutProblem(demands, supplies, kerf), Planner.USUAL_EFFORT);
    }

    private static CutPlan plan(List<Demand> demands, List<Supply> supplies, long kerf) {
        return ((PlanOutcome.Planned) outcome(demands, supplies, kerf)).plan();
    }

    @Test
    void two_halves_fill_a_board_only_if_the_saw_takes_nothing() {
        List<Demand> halves = List.of(new Demand(48, 2));
        assertThat(plan(halves, List.of(EIGHT), 0).boards()).hasSize(1);
        assertThat(plan(halves, List.of(EIGHT), 1).boards()).hasSize(2);
    }

    @Test
    void a_longer_board_is_taken_where_it_is_cheaper_than_two() {
        CutPlan plan = plan(List.of(new Demand(58, 2)), List.of(EIGHT, TEN), 1);
        assertThat(plan.boards()).containsExactly(new CutBoard(1, List.of(0, 0)));
    }

    /** Two of 8 at 800 and one of 16 at 1600 cost the same; the one board is less to carry. */
    @Test
    void among_plans_as_cheap_the_one_with_fewer_boards_is_taken() {
        Supply sixteen = new Supply(192, 1600, Supply.NO_LIMIT);
        CutPlan plan = plan(List.of(new Demand(90, 2)), List.of(EIGHT, sixteen), 1);
        assertThat(plan.boards()).containsExactly(new CutBoard(1, List.of(0, 0)));
        assertThat(plan.proof().fewest()).isTrue();
    }

    /**
     * Boards of 100, pieces 50, 30, 30, 20 and no kerf: 130 of 200. Apart as 50 + 30 and 30 + 20 they leave 20 and 50;
     * all but one 30 on one board leaves 70, and nothing leaves more.
     */
    @Test
    void among_plans_with_as_many_boards_the_longest_piece_is_left() {
        CutPlan plan = plan(
                List.of(new Demand(50, 1), new Demand(30, 2), new Demand(20, 1)),
                List.of(new Supply(100, 900, Supply.NO_LIMIT)),
                0);
        CutProblem problem = new CutProblem(
                List.of(new Demand(50, 1), new Demand(30, 2), new Demand(20, 1)),
                List.of(new Supply(100, 900, Supply.NO_LIMIT)),
                0);
        assertThat(plan.boards()).hasSize(2);
        assertThat(plan.longestLeft(problem)).isEqualTo(70);
        assertThat(plan.proof().longest()).isTrue();
    }

    @Test
    void the_rack_goes_before_the_yard() {
        CutPlan plan = plan(List.of(new Demand(40, 2)), List.of(EIGHT, new Supply(40, 0, 2)), 1);
        assertThat(plan.boards()).extracting(CutBoard::supply).containsExactly(1, 1);
    }

    @Test
    void pieces_longer_than_every_board_are_named() {
        assertThat(outcome(List.of(new Demand(121, 1), new Demand(96, 1)), List.of(EIGHT, TEN), 0))
                .isEqualTo(new PlanOutcome.TooLong(List.of(0)));
        assertThat(outcome(List.of(new Demand(97, 1)), List.of(EIGHT, new Supply(120, 1100, 0)), 0))
                .isEqualTo(new PlanOutcome.TooLong(List.of(0)));
    }

    @Test
    void a_yard_that_runs_out_is_not_enough() {
        assertThat(outcome(List.of(new Demand(60, 3)), List.of(new Supply(96, 800, 2)), 0))
                .isEqualTo(new PlanOutcome.NotEnough());
    }

    /** 6 pieces of 35 and 3 of 30 are 300 of 300, yet 35 + 35 + 30 is all that fills a board: two 35s and a 30 each. */
    @Test
    void a_tight_fit_is_found_and_a_tighter_one_refused() {
        List<Demand> demands = List.of(new Demand(35, 6), new Demand(30, 3));
        assertThat(plan(demands, List.of(new Supply(100, 500, 3)), 0).boards()).hasSize(3);
        assertThat(outcome(List.of(new Demand(35, 5), new Demand(31, 4)), List.of(new Supply(100, 500, 3)), 0))
                .isEqualTo(new PlanOutcome.NotEnough());
    }

    @Test
    void nothing_wanted_is_nothing_bought() {
        assertThat(plan(List.of(), List.of(EIGHT), 1).boards()).isEmpty();
    }

    @Test
    void a_free_board_without_limit_is_never_too_many() {
        CutPlan plan = plan(List.of(new Demand(40, 5)), List.of(EIGHT, new Supply(50, 0, Supply.NO_LIMIT)), 1);
        assertThat(plan.boards()).hasSize(5).extracting(CutBoard::supply).containsOnly(1);
    }

    @Test
    void the_greatest_numbers_allowed_do_not_overflow() {
        CutPlan plan = plan(
                List.of(new Demand((1 << 29) + 1, 1), new Demand(1, 1000)),
                List.of(
                        new Supply(1L << 40, CutProblem.MOST_PRICE, Supply.NO_LIMIT),
                        new Supply(1L << 29, CutProblem.MOST_PRICE - 1, Supply.NO_LIMIT)),
                0);
        assertThat(plan.boards()).hasSize(1);
        assertThat(plan.proof().cheapest()).isTrue();
    }

    @Test
    void numbers_beyond_are_refused() {
        assertThatThrownBy(() -> new CutProblem(List.of(new Demand(1 << 29, 2)), List.of(EIGHT), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("coarser tick");
        assertThatThrownBy(() -> new Supply(96, -1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Demand(0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
