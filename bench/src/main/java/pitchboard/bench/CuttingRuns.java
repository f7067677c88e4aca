package pitchboard.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.search.Planner;

/**
 * Time to the proof of a cutting plan, beside CP-SAT on the same problems, one after the other. A line for each
 * problem: our time to the end of the search, warm, median of five; then its time to a proof, or how much its best
 * plan costs above ours when its time was up. Times are of the processor, so that they can be compared on a
 * machine that does other work, too.
 */
public final class CuttingRuns {
    private static final int RUNS = 5;

    private final double limit;

    private CuttingRuns(double limit) {
        this.limit = limit;
    }

    public static void main(String[] arguments) {
        CuttingRuns runs = new CuttingRuns(Double.parseDouble(arguments[0]));
        for (int i = 0; i < 40; i++) {
            Planner.plan(CuttingProblems.stairs(1, 1000 + i), Planner.USUAL_EFFORT);
        }
        runs.stairs("one stair", 1, 10);
        runs.stairs("ten stairs", 10, 5);
        CuttingProblems.lumber().forEach(runs::line);
    }

    private void stairs(String name, int stairs, int problems) {
        List<Double> times = new ArrayList<>();
        for (int seed = 0; seed < problems; seed++) {
            times.add(line(name + " " + seed, CuttingProblems.stairs(stairs, seed)));
        }
        System.out.printf(Locale.ROOT, "%s: %s%n", name, Spread.of(times));
    }

    /** Answers our milliseconds. */
    private double line(String name, CutProblem problem) {
        double[] times = new double[RUNS];
        CutPlan plan = null;
        for (int run = 0; run < RUNS; run++) {
            double began = ownMs();
            plan = ((PlanOutcome.Planned) Planner.plan(problem, Planner.USUAL_EFFORT)).plan();
            times[run] = ownMs() - began;
        }
        Arrays.sort(times);
        double median = times[RUNS / 2];
        long cost = plan.cost(problem);
        String proved = plan.proof().cheapest()
                ? "proved"
                : "open, at least " + plan.proof().atLeast();
        System.out.printf(
                Locale.ROOT,
                "%-14s %3d pieces  cost %6d %s  ours %7.1f ms   CP-SAT %s%n",
                name,
                problem.pieces(),
                cost,
                proved,
                median,
                words(OtherSolver.cpSat(problem, limit), cost, median));

        return median;
    }

    private static double ownMs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
    }

    private String words(OtherSolver.Result result, long cost, double ours) {
        if (result.isProved()) {
            String wrong = Math.round(result.cost()) == cost ? "" : " ANOTHER COST " + result.cost();
            return String.format(Locale.ROOT, "%.0f ms, %.1f x%s", result.ms(), result.ms() / ours, wrong);
        }
        return Double.isNaN(result.cost())
                ? "nothing in " + limit + " s"
                : String.format(Locale.ROOT, "not proved in %.0f s, +%.2f %%", limit, 100 * (result.cost() / cost - 1));
    }
}
