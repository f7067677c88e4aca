package pitchboard.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.PlanChecker;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.search.Planner;

/**
 * Time to the proof of a cutting plan, beside general-purpose solvers on the same problems, one after the other. A line
 * for each problem: our time to the end of the search, warm, median of five; then each solver's time to a proof, or how
 * much its best plan costs above ours when its time was up. A line for each class after it. Times are of the processor,
 * so that they can be compared on a machine that does other work, too.
 */
public final class CuttingRuns {
    private static final int RUNS = 5;
    private static final List<String> SOLVERS = List.of("CP-SAT", "CBC");

    private final double limit;

    private CuttingRuns(double limit) {
        this.limit = limit;
    }

    /** @param arguments seconds each solver may take; zero asks none */
    public static void main(String[] arguments) {
        CuttingRuns runs = new CuttingRuns(Double.parseDouble(arguments[0]));
        for (int i = 0; i < 400; i++) {
            Planner.plan(CuttingProblems.stairs(1, 1000 + i), Planner.USUAL_EFFORT);
        }
        runs.group("a stair", drawn(1, 10));
        runs.group("ten stairs", drawn(10, 10));
        for (String letter : List.of("A", "B", "C", "D", "E")) {
            Map<String, CutProblem> some = new LinkedHashMap<>(CuttingProblems.lumber());
            some.keySet().removeIf(name -> !name.startsWith("lum_" + letter));
            runs.group("lumber " + letter, some);
        }
    }

    private static Map<String, CutProblem> drawn(int stairs, int problems) {
        Map<String, CutProblem> drawn = new LinkedHashMap<>();
        for (int seed = 0; seed < problems; seed++) {
            drawn.put(stairs + (stairs == 1 ? " stair " : " stairs ") + seed, CuttingProblems.stairs(stairs, seed));
        }
        return drawn;
    }

    private void group(String name, Map<String, CutProblem> problems) {
        List<Double> times = new ArrayList<>();
        Map<String, List<Double>> ratios = new LinkedHashMap<>();
        SOLVERS.forEach(solver -> ratios.put(solver, new ArrayList<>()));
        problems.forEach((each, problem) -> times.add(line(each, problem, ratios)));
        System.out.printf(Locale.ROOT, "%s: ours, %s%n", name, Spread.of(times));
        if (limit > 0) {
            ratios.forEach((solver, proved) -> System.out.printf(
                    Locale.ROOT,
                    "%s: %s proved %d of %d%s%n",
                    name,
                    solver,
                    proved.size(),
                    problems.size(),
                    proved.isEmpty() ? "" : ", times ours: " + Spread.of(proved).plain()));
        }
    }

    /** Answers our milliseconds. */
    private double line(String name, CutProblem problem, Map<String, List<Double>> ratios) {
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
        List<String> faults = PlanChecker.faults(problem, plan, cost);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(name + ": " + faults);
        }
        String proved = plan.proof().cheapest()
                ? "proved"
                : "open, at least " + plan.proof().atLeast();
        System.out.printf(
                Locale.ROOT,
                "%-12s %3d pieces  cost %6d %s%s, %d boards  ours %7.1f ms",
                name,
                problem.pieces(),
                cost,
                proved,
                plan.proof().fewest() ? "" : ", fewest boards open",
                plan.bought(problem),
                median);
        for (String solver : limit > 0 ? SOLVERS : List.<String>of()) {
            OtherSolver.Result result = solver.equals("CP-SAT")
                    ? OtherSolver.cpSat(problem, limit)
                    : OtherSolver.mixedInteger(solver, problem, limit);
            if (result.isProved()) {
                ratios.get(solver).add(result.ms() / median);
            }
            System.out.printf("   %s %s", solver, words(result, cost, median));
        }
        System.out.println();
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
