package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Supply;

/**
 * Against a general-purpose solver, CP-SAT of OR-Tools 9.11, on 40 drawn problems of up to 10 pieces. It is told which
 * piece may lie on which board and nothing else, so it shares neither method nor model with the planner.
 */
final class PlannerOracleTest {
    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    private static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cost_and_number_of_boards_are_the_solvers_own(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 10);
        OptionalLong expected = new Assignment(problem, all(problem)).cheapest();
        PlanOutcome outcome = Planner.plan(problem, Planner.USUAL_EFFORT);
        if (expected.isEmpty()) {
            assertThat(outcome).isNotInstanceOfAny(PlanOutcome.Planned.class, PlanOutcome.GaveUp.class);
            return;
        }
        CutPlan plan = ((PlanOutcome.Planned) outcome).plan();
        assertThat(plan.cost(problem) * Assignment.BOARD_WEIGHT + plan.bought(problem))
                .isEqualTo(expected.getAsLong());
        assertThat(plan.proof().fewest()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_longer_piece_can_be_left_of_these_boards(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 10);
        if (Planner.plan(problem, Planner.USUAL_EFFORT) instanceof PlanOutcome.Planned planned) {
            CutPlan plan = planned.plan();
            List<Integer> boards = new ArrayList<>();
            plan.boards().stream()
                    .map(CutBoard::supply)
                    .filter(at -> price(problem, at) > 0)
                    .forEach(boards::add);
            all(problem).stream().filter(at -> price(problem, at) == 0).forEach(boards::add);
            assertThat(plan.proof().longest()).isTrue();
            assertThat(plan.longestLeft(problem)).isEqualTo(new Assignment(problem, boards).longestLeft());
        }
    }

    private static long price(CutProblem problem, int supply) {
        return problem.supplies().get(supply).price();
    }

    /** Every board that could be of use, by its supply. */
    private static List<Integer> all(CutProblem problem) {
        List<Integer> boards = new ArrayList<>();
        for (int supply = 0; supply < problem.supplies().size(); supply++) {
            for (int i = Math.min(problem.supplies().get(supply).onHand(), problem.pieces()); i > 0; i--) {
                boards.add(supply);
            }
        }
        return boards;
    }

    /** Which piece lies on which board. */
    private static final class Assignment {
        static final long BOARD_WEIGHT = 1000;

        private final CutProblem problem;
        private final List<Integer> boards;
        private final CpModel model = new CpModel();
        private final BoolVar[] used;
        private final LinearExprBuilder[] loads;

        Assignment(CutProblem problem, List<Integer> boards) {
            this.problem = problem;
            this.boards = boards;
            used = new BoolVar[boards.size()];
            loads = new LinearExprBuilder[boards.size()];
            for (int board = 0; board < used.length; board++) {
                used[board] = model.newBoolVar("used" + board);
                loads[board] = LinearExpr.newBuilder();
                if (board > 0 && boards.get(board).equals(boards.get(board - 1))) {
                    model.addImplication(used[board], used[board - 1]);
                }
            }
            problem.demands().forEach(this::place);
            for (int board = 0; board < used.length; board++) {
                Supply supply = problem.supplies().get(boards.get(board));
                LinearExpr room = LinearExpr.term(used[board], supply.length() + problem.kerf());
                model.addLessOrEqual(loads[board], room);
            }
        }

        private void place(Demand demand) {
            for (int piece = 0; piece < demand.quantity(); piece++) {
                List<Literal> places = new ArrayList<>();
                for (LinearExprBuilder load : loads) {
                    BoolVar here = model.newBoolVar("here");
                    places.add(here);
                    load.addTerm(here, demand.length() + problem.kerf());
                }
                model.addExactlyOne(places);
            }
        }

        OptionalLong cheapest() {
            LinearExprBuilder cost = LinearExpr.newBuilder();
            for (int board = 0; board < used.length; board++) {
                long price = price(problem, boards.get(board));
                cost.addTerm(used[board], price > 0 ? price * BOARD_WEIGHT + 1 : 0);
            }
            model.minimize(cost);
            CpSolver solver = new CpSolver();
            CpSolverStatus status = solve(solver);
            return status == CpSolverStatus.OPTIMAL
                    ? OptionalLong.of(Math.round(solver.objectiveValue()))
                    : OptionalLong.empty();
        }

        /** The most that any one bought board can keep. */
        long longestLeft() {
            long longest = 0;
            for (int board = 0; board < used.length; board++) {
                Supply supply = problem.supplies().get(boards.get(board));
                if (supply.price() > 0) {
                    model.minimize(loads[board]);
                    CpSolver solver = new CpSolver();
                    assertThat(solve(solver)).isEqualTo(CpSolverStatus.OPTIMAL);
                    longest = Math.max(longest, supply.length() - Math.round(solver.objectiveValue()));
                }
            }
            return longest;
        }

        private CpSolverStatus solve(CpSolver solver) {
            solver.getParameters().setNumWorkers(1).setRandomSeed(1);
            CpSolverStatus status = solver.solve(model);
            assertThat(status).isIn(CpSolverStatus.OPTIMAL, CpSolverStatus.INFEASIBLE);
            return status;
        }
    }
}
