package pitchboard.buying.search;

import java.util.List;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Pattern;

/** The best plan found so far. */
final class Best {
    private final Model model;
    private List<Pattern> plan = List.of();
    private long cost;

    static Best ofAll(Model model) {
        long limit = 1;
        for (int stock = 0; stock < model.stocks(); stock++) {
            limit = Math.addExact(limit, Math.multiplyExact(model.cost[stock], (long) model.most[stock]));
        }
        return new Best(model, limit);
    }

    /** @param limit only plans that cost less are of interest, in units of the model's cost */
    private Best(Model model, long limit) {
        this.model = model;
        cost = limit;
    }

    /** Keeps the plan if it beats what is kept; an empty one never does. */
    void offer(List<Pattern> offered) {
        long sum = 0;
        for (Pattern pattern : offered) {
            sum += model.cost[pattern.stock()];
        }
        if (!offered.isEmpty() && sum < cost) {
            cost = sum;
            plan = List.copyOf(offered);
        }
    }

    /** One pattern for each board; empty while nothing is found. */
    List<Pattern> plan() {
        return plan;
    }

    /** The plan's, or the limit while nothing is found. */
    long cost() {
        return cost;
    }
}
