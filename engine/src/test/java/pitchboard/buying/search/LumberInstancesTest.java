package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.PlanChecker;
import pitchboard.buying.cutting.PlanOutcome;

/**
 * Twenty lumber problems whose optimum was proved before, thirteen of them twice: {@code optima.csv} beside the problems
 * says how. Each must come out proved, at exactly that cost.
 */
final class LumberInstancesTest {
    private static Stream<String> names() {
        return Lumber.optima().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_known_optimum_is_found_and_proved(String name) {
        long optimum = Lumber.optima().get(name);
        CutProblem problem = Lumber.problem(name);
        CutPlan plan = ((PlanOutcome.Planned) Planner.plan(problem, Planner.USUAL_EFFORT)).plan();
        assertThat(PlanChecker.faults(problem, plan, optimum)).isEmpty();
        assertThat(plan.proof().cheapest()).isTrue();
        assertThat(plan.proof().fewest()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_plan_that_came_with_the_problem_is_right_too(String name) {
        long optimum = Lumber.optima().get(name);
        CutProblem problem = Lumber.problem(name);
        assertThat(PlanChecker.faults(problem, Lumber.solution(name, problem, optimum), optimum))
                .isEmpty();
    }

    @Test
    void all_twenty_are_there() {
        assertThat(Lumber.optima()).hasSize(20);
    }
}
