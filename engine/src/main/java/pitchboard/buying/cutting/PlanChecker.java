package pitchboard.buying.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * Confirms a plan by counting and adding up, board by board. It shares no code with the search, nor with the sums of the
 * plan itself, so that a fault in either shows.
 */
public final class PlanChecker {
    private PlanChecker() {}

    /**
     * Everything wrong with the plan, in words for the log; empty when it is right.
     *
     * @param cost what the plan is said to cost, in the smallest coin
     */
    public static List<String> faults(CutProblem problem, CutPlan plan, long cost) {
        List<String> faults = new ArrayList<>();
        int[] cut = new int[problem.demands().size()];
        int[] taken = new int[problem.supplies().size()];
        long paid = 0;
        for (int number = 1; number <= plan.boards().size(); number++) {
            CutBoard board = plan.boards().get(number - 1);
            Supply supply = problem.supplies().get(board.supply());
            taken[board.supply()]++;
            paid = Math.addExact(paid, supply.price());
            long saw = walk(problem, board, cut);
            if (saw > supply.length()) {
                faults.add("board " + number + " is " + supply.length() + " long and cut to " + saw);
            }
        }
        countPieces(problem, cut, faults);
        countBoards(problem, taken, faults);
        checkSums(plan.proof(), paid, cost, faults);
        return List.copyOf(faults);
    }

    /** Walks the saw along the board; answers where the last piece ends. */
    private static long walk(CutProblem problem, CutBoard board, int[] cut) {
        long end = -problem.kerf();
        for (int demand : board.demands()) {
            cut[demand]++;
            end += problem.kerf() + problem.demands().get(demand).length();
        }
        return end;
    }

    private static void countPieces(CutProblem problem, int[] cut, List<String> faults) {
        for (int demand = 0; demand < cut.length; demand++) {
            int wanted = problem.demands().get(demand).quantity();
            if (cut[demand] != wanted) {
                faults.add("piece " + demand + " is cut " + cut[demand] + " times instead of " + wanted);
            }
        }
    }

    private static void countBoards(CutProblem problem, int[] taken, List<String> faults) {
        for (int supply = 0; supply < taken.length; supply++) {
            int onHand = problem.supplies().get(supply).onHand();
            if (taken[supply] > onHand) {
                faults.add("board kind " + supply + " is taken " + taken[supply] + " times of " + onHand);
            }
        }
    }

    private static void checkSums(Proof proof, long paid, long cost, List<String> faults) {
        if (paid != cost) {
            faults.add("the boards cost " + paid + ", not " + cost);
        }
        if (proof.atLeast() > paid) {
            faults.add("said to cost at least " + proof.atLeast() + ", yet the boards cost " + paid);
        }
        if (proof.cheapest() != (proof.atLeast() == paid)) {
            faults.add("said to be " + (proof.cheapest() ? "" : "not ") + "proved with a bound of " + proof.atLeast());
        }
    }
}
