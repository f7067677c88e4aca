package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Filling;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Pattern;
import pitchboard.buying.relaxing.Patterns;

/** Finishes a plan by filling one board after the other, each time the one that yields most for its cost. */
final class Greedy {
    private final Model model;
    private final Filling filling;
    private final Effort effort;

    Greedy(Model model, Effort effort) {
        this.model = model;
        this.effort = effort;
        filling = new Filling(model);
    }

    /**
     * A whole plan that begins with these patterns.
     *
     * @param worth of each kind, more than zero for those still to cut
     * @return the patterns, or an empty list when the boards run out
     */
    List<Pattern> complete(List<Pattern> start, long[] worth) {
        int[] left = model.demand.clone();
        int[] boards = model.most.clone();
        List<Pattern> plan = new ArrayList<>();
        for (Pattern pattern : start) {
            take(pattern, left, boards, plan);
        }
        long[] nothing = new long[model.stocks()];
        while (total(left) > 0) {
            long[] yield = filling.search(worth, left, nothing);
            effort.spend(1 + filling.work() / 1000);
            int best = best(yield, boards);
            if (best < 0) {
                return List.of();
            }
            take(filling.pattern(best), left, boards, plan);
        }
        shrink(plan, boards);
        return plan;
    }

    private int best(long[] yield, int[] boards) {
        int best = -1;
        for (int stock = 0; stock < yield.length; stock++) {
            if (boards[stock] > 0 && yield[stock] > 0 && (best < 0 || beats(yield, stock, best))) {
                best = stock;
            }
        }
        return best;
    }

    private boolean beats(long[] yield, int stock, int best) {
        if (model.isFree(stock) || model.isFree(best)) {
            return model.isFree(stock) && (!model.isFree(best) || yield[stock] > yield[best]);
        }
        return (double) yield[stock] / model.cost[stock] > (double) yield[best] / model.cost[best];
    }

    /** Takes what the pattern has of pieces still wanted. */
    private void take(Pattern pattern, int[] left, int[] boards, List<Pattern> plan) {
        int[] counts = new int[model.kinds()];
        int used = 0;
        for (int i = 0; i < pattern.kinds().length; i++) {
            int kind = pattern.kinds()[i];
            counts[kind] = Math.min(pattern.counts()[i], left[kind]);
            left[kind] -= counts[kind];
            used += counts[kind] > 0 ? 1 : 0;
        }
        if (used > 0) {
            boards[pattern.stock()]--;
            plan.add(Patterns.of(pattern.stock(), counts, used));
        }
    }

    /** Cuts every pattern from the cheapest board still to be had that it fits on. */
    private void shrink(List<Pattern> plan, int[] boards) {
        for (int at = 0; at < plan.size(); at++) {
            Pattern pattern = plan.get(at);
            int load = load(pattern);
            int best = pattern.stock();
            for (int stock = 0; stock < model.stocks(); stock++) {
                if (boards[stock] > 0 && model.room[stock] >= load && model.cost[stock] < model.cost[best]) {
                    best = stock;
                }
            }
            boards[pattern.stock()]++;
            boards[best]--;
            plan.set(at, new Pattern(best, pattern.kinds(), pattern.counts()));
        }
    }

    private int load(Pattern pattern) {
        int load = 0;
        for (int i = 0; i < pattern.kinds().length; i++) {
            load += model.weight[pattern.kinds()[i]] * pattern.counts()[i];
        }
        return load;
    }

    static int total(int[] left) {
        int total = 0;
        for (int each : left) {
            total += each;
        }
        return total;
    }
}
