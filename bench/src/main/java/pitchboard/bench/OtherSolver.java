package pitchboard.bench;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Supply;

/**
 * General-purpose solvers of OR-Tools, CP-SAT and the mixed-integer ones, told how many pieces of each length lie on
 * which board: the model that most people write. Boards alike are ordered, and there are no more of a kind than its
 * pieces could fill.
 */
final class OtherSolver {
    /** @param cost NaN when no plan was found */
    record Result(boolean isProved, double cost, double ms) {}

    static {
        Loader.loadNativeLibraries();
    }

    private OtherSolver() {}

    /** Milliseconds of processor that this program has used. */
    static double processorMs() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e6;
    }

    /** Enough boards of each kind: half as many again as would hold all pieces, were they sand. */
    private static List<Supply> boards(CutProblem problem) {
        long length = problem.demands().stream()
                .mapToLong(demand -> demand.quantity() * (demand.length() + problem.kerf()))
                .sum();
        List<Supply> boards = new ArrayList<>();
        for (Supply supply : problem.supplies()) {
            long useful = Math.min(problem.pieces(), 2 + length * 3 / (2 * supply.length()));
            for (long i = Math.min(supply.onHand(), useful); i > 0; i--) {
                boards.add(supply);
            }
        }
        return boards;
    }

    /** @param limit in the solver's own time, about seconds of a free processor whatever else the machine does */
    static Result cpSat(CutProblem problem, double limit) {
        CpModel model = new CpModel();
        List<Supply> boards = boards(problem);
        LinearExprBuilder cost = LinearExpr.newBuilder();
        LinearExprBuilder[] cut = new LinearExprBuilder[problem.demands().size()];
        for (int kind = 0; kind < cut.length; kind++) {
            cut[kind] = LinearExpr.newBuilder();
        }
        BoolVar before = null;
        for (int board = 0; board < boards.size(); board++) {
            Supply supply = boards.get(board);
            BoolVar used = model.newBoolVar("used");
            if (board > 0 && supply.equals(boards.get(board - 1))) {
                model.addImplication(used, before);
            }
            before = used;
            cost.addTerm(used, supply.price());
            LinearExprBuilder load = LinearExpr.newBuilder();
            for (int kind = 0; kind < cut.length; kind++) {
                Demand demand = problem.demands().get(kind);
                IntVar here = model.newIntVar(0, demand.quantity(), "here");
                load.addTerm(here, demand.length() + problem.kerf());
                cut[kind].add(here);
            }
            model.addLessOrEqual(load, LinearExpr.term(used, supply.length() + problem.kerf()));
        }
        for (int kind = 0; kind < cut.length; kind++) {
            model.addEquality(cut[kind], problem.demands().get(kind).quantity());
        }
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxDeterministicTime(limit).setNumWorkers(1);
        double began = processorMs();
        CpSolverStatus status = solver.solve(model);
        double ms = processorMs() - began;
        boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Result(status == CpSolverStatus.OPTIMAL, any ? solver.objectiveValue() : Double.NaN, ms);
    }

    /**
     * @param name of a mixed-integer solver, such as CBC or SCIP
     * @param limit in seconds by the clock
     */
    static Result mixedInteger(String name, CutProblem problem, double limit) {
        MPSolver solver = MPSolver.createSolver(name);
        List<Supply> boards = boards(problem);
        MPObjective cost = solver.objective();
        List<MPConstraint> cut = new ArrayList<>();
        for (Demand demand : problem.demands()) {
            cut.add(solver.makeConstraint(demand.quantity(), demand.quantity()));
        }
        MPVariable before = null;
        for (int board = 0; board < boards.size(); board++) {
            Supply supply = boards.get(board);
            MPVariable used = solver.makeBoolVar("");
            if (before != null && supply.equals(boards.get(board - 1))) {
                MPConstraint order = solver.makeConstraint(0, 1);
                order.setCoefficient(before, 1);
                order.setCoefficient(used, -1);
            }
            before = used;
            cost.setCoefficient(used, (double) supply.price());
            MPConstraint load = solver.makeConstraint(Double.NEGATIVE_INFINITY, 0);
            load.setCoefficient(used, -(double) (supply.length() + problem.kerf()));
            for (int kind = 0; kind < cut.size(); kind++) {
                Demand demand = problem.demands().get(kind);
                MPVariable here = solver.makeIntVar(0, demand.quantity(), "");
                load.setCoefficient(here, (double) (demand.length() + problem.kerf()));
                cut.get(kind).setCoefficient(here, 1);
            }
        }
        cost.setMinimization();
        solver.setTimeLimit((long) (1000 * limit));
        double began = processorMs();
        MPSolver.ResultStatus status = solver.solve();
        double ms = processorMs() - began;
        boolean any = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        return new Result(status == MPSolver.ResultStatus.OPTIMAL, any ? cost.value() : Double.NaN, ms);
    }
}
