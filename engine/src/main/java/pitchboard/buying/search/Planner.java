package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Proof;
import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Model;

/** Plans which boards to take and how to cut them: the cheapest, then the fewest, then the longest piece left over. */
public final class Planner {
    /** Enough for any ordinary stair many times over; a few seconds for a hard problem. */
    public static final long USUAL_EFFORT = 500_000;

    /** The longest piece left is looked for with at most this part of the effort. */
    private static final long LEFTOVER_SHARE = 4;

    private Planner() {}

    /**
     * @param effort steps of work allowed, one or more; the same problem with the same effort gives the same plan
     * @return a plan, proved as far as the effort went, or why there is none
     */
    public static PlanOutcome plan(CutProblem problem, long effort) {
        if (problem.demands().isEmpty()) {
            return new PlanOutcome.Planned(new CutPlan(List.of(), new Proof(0, true, true, true, 0)));
        }
        List<Integer> tooLong = tooLong(problem);
        if (!tooLong.isEmpty()) {
            return new PlanOutcome.TooLong(tooLong);
        }
        Model model = new Model(problem);
        Effort spent = new Effort(effort);
        Best best = Best.ofAll(model);
        long bound = new CountSearch(model, spent, best).run();
        if (best.plan().isEmpty()) {
            return bound >= best.cost() ? new PlanOutcome.NotEnough() : new PlanOutcome.GaveUp(spent.spent());
        }
        List<CutBoard> boards = new Boards(problem, model).cut(best.plan());
        spent.allow(Math.max(1, effort / LEFTOVER_SHARE));
        Leftover leftover = Leftover.longest(problem, boards, spent);
        return new PlanOutcome.Planned(
                new CutPlan(leftover.boards(), proof(model, bound, best.cost(), leftover.isSure(), spent)));
    }

    private static Proof proof(Model model, long bound, long cost, boolean longest, Effort spent) {
        long atLeast = Math.floorDiv(bound, model.boardWeight);
        boolean cheapest = atLeast >= Math.floorDiv(cost, model.boardWeight);
        return new Proof(atLeast, cheapest, bound >= cost, longest, spent.spent());
    }

    private static List<Integer> tooLong(CutProblem problem) {
        long longest = problem.supplies().stream()
                .filter(supply -> supply.onHand() > 0)
                .mapToLong(supply -> supply.length())
                .max()
                .orElse(0);
        List<Integer> tooLong = new ArrayList<>();
        for (int demand = 0; demand < problem.demands().size(); demand++) {
            if (problem.demands().get(demand).length() > longest) {
                tooLong.add(demand);
            }
        }
        return tooLong;
    }
}
