package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.PlanChecker;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Supply;

/** What holds for every problem, over 80 drawn ones of up to 30 pieces. */
final class PlannerLawsTest {
    private static LongStream seeds() {
        return LongStream.range(0, 80);
    }

    private static Optional<CutPlan> plan(CutProblem problem) {
        PlanOutcome outcome = Planner.plan(problem, Planner.USUAL_EFFORT);
        return outcome instanceof PlanOutcome.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    private static CutProblem with(CutProblem problem, List<Supply> supplies) {
        return new CutProblem(problem.demands(), supplies, problem.kerf());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_plan_is_right_and_proved(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 30);
        plan(problem).ifPresent(plan -> {
            assertThat(PlanChecker.faults(problem, plan, plan.cost(problem))).isEmpty();
            assertThat(plan.proof().fewest()).isTrue();
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_same_problem_gives_the_same_plan(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 30);
        assertThat(plan(problem)).isEqualTo(plan(problem));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_cheaper_yard_never_makes_it_dearer(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 30);
        List<Supply> cheaper = new ArrayList<>(problem.supplies());
        Supply changed = cheaper.get(0);
        cheaper.set(0, new Supply(changed.length(), changed.price() * 9 / 10, changed.onHand()));
        CutProblem after = with(problem, cheaper);
        plan(problem)
                .ifPresent(before ->
                        assertThat(plan(after).orElseThrow().cost(after)).isLessThanOrEqualTo(before.cost(problem)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void another_piece_on_the_rack_never_makes_it_dearer(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 30);
        List<Supply> more = new ArrayList<>(problem.supplies());
        more.add(new Supply(300 + seed, 0, 1));
        CutProblem after = with(problem, more);
        plan(problem)
                .ifPresent(before ->
                        assertThat(plan(after).orElseThrow().cost(after)).isLessThanOrEqualTo(before.cost(problem)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_thinner_saw_never_makes_it_dearer(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 30);
        CutProblem thin = new CutProblem(problem.demands(), problem.supplies(), 0);
        plan(problem)
                .ifPresent(before ->
                        assertThat(plan(thin).orElseThrow().cost(thin)).isLessThanOrEqualTo(before.cost(problem)));
    }

    /** However little effort is allowed, the plan is right and its bound is below the true optimum. */
    @ParameterizedTest
    @MethodSource("seeds")
    void a_plan_cut_short_says_what_it_knows(long seed) {
        CutProblem problem = RandomCuts.draw(seed, 30);
        PlanOutcome early = Planner.plan(problem, 1 + seed);
        if (early instanceof PlanOutcome.Planned planned) {
            CutPlan plan = planned.plan();
            assertThat(PlanChecker.faults(problem, plan, plan.cost(problem))).isEmpty();
            assertThat(plan.proof().atLeast())
                    .isLessThanOrEqualTo(plan(problem).orElseThrow().cost(problem));
        }
    }

    /** Bought singly, two jobs never cost less than bought together. */
    @ParameterizedTest
    @MethodSource("seeds")
    void two_jobs_bought_together_never_cost_more(long seed) {
        CutProblem one = unlimited(RandomCuts.draw(seed, 12));
        CutProblem other = new CutProblem(RandomCuts.draw(seed + 1000, 12).demands(), one.supplies(), one.kerf());
        List<pitchboard.buying.cutting.Demand> all = new ArrayList<>(one.demands());
        all.addAll(other.demands());
        CutProblem both = new CutProblem(all, one.supplies(), one.kerf());
        assertThat(plan(both).orElseThrow().cost(both))
                .isLessThanOrEqualTo(plan(one).orElseThrow().cost(one)
                        + plan(other).orElseThrow().cost(other));
    }

    private static CutProblem unlimited(CutProblem problem) {
        List<Supply> bought = problem.supplies().stream()
                .filter(supply -> supply.price() > 0)
                .map(supply -> new Supply(supply.length(), supply.price(), Supply.NO_LIMIT))
                .toList();
        return with(problem, bought);
    }
}
