package pitchboard.buying.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The checker must see every kind of fault: here each is planted once. */
final class PlanCheckerTest {
    /** Boards of 96 at 500 and of 120 at 700, only one of these; pieces 48 and 30; an eighth of kerf, all in eighths. */
    private static final CutProblem PROBLEM = new CutProblem(
            List.of(new Demand(48 * 8, 2), new Demand(30 * 8, 2)),
            List.of(new Supply(96 * 8, 500, Supply.NO_LIMIT), new Supply(120 * 8, 700, 1)),
            1);

    private static final CutBoard FIRST = new CutBoard(0, List.of(0, 1));
    private static final Proof OPEN = new Proof(900, false, false, false, 1);

    private static List<String> faults(long cost, Proof proof, CutBoard... boards) {
        return PlanChecker.faults(PROBLEM, new CutPlan(List.of(boards), proof), cost);
    }

    @Test
    void a_right_plan_has_no_fault() {
        assertThat(faults(1000, OPEN, FIRST, FIRST)).isEmpty();
    }

    @Test
    void two_halves_and_a_kerf_are_longer_than_the_whole() {
        CutBoard halves = new CutBoard(0, List.of(0, 0));
        CutBoard rest = new CutBoard(0, List.of(1, 1));
        assertThat(faults(1000, OPEN, halves, rest)).containsExactly("board 1 is 768 long and cut to 769");
    }

    @Test
    void a_missing_piece_and_one_too_many_are_seen() {
        CutBoard many = new CutBoard(0, List.of(1, 1));
        assertThat(faults(1000, OPEN, FIRST, many))
                .containsExactly("piece 0 is cut 1 times instead of 2", "piece 1 is cut 3 times instead of 2");
    }

    @Test
    void a_board_that_is_not_on_hand_is_seen() {
        CutBoard scarce = new CutBoard(1, List.of(0, 1));
        assertThat(faults(1400, OPEN, scarce, scarce)).containsExactly("board kind 1 is taken 2 times of 1");
    }

    @Test
    void a_cent_too_little_is_seen() {
        assertThat(faults(999, OPEN, FIRST, FIRST)).containsExactly("the boards cost 1000, not 999");
    }

    @Test
    void a_bound_above_the_cost_is_seen() {
        assertThat(faults(1000, new Proof(1001, false, false, false, 1), FIRST, FIRST))
                .containsExactly("said to cost at least 1001, yet the boards cost 1000");
    }

    @Test
    void a_proof_that_its_bound_does_not_bear_out_is_seen() {
        assertThat(faults(1000, new Proof(900, true, false, false, 1), FIRST, FIRST))
                .containsExactly("said to be proved with a bound of 900");
        assertThat(faults(1000, new Proof(1000, false, false, false, 1), FIRST, FIRST))
                .containsExactly("said to be not proved with a bound of 1000");
    }

    @Test
    void what_is_left_has_lost_its_last_kerf() {
        assertThat(FIRST.filled(PROBLEM)).isEqualTo(78 * 8 + 1);
        assertThat(FIRST.left(PROBLEM)).isEqualTo(18 * 8 - 2);
        assertThat(new CutBoard(0, List.of(0, 0)).left(PROBLEM)).isZero();
    }
}
