package pitchboard.buying.search;

import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Filling;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Pattern;

/**
 * Finishes a plan begun by filling the boards left one after the other, each time the one that can be filled fullest.
 * When pieces remain it begins again, with a greater worth for them and for the pieces of boards that were filled badly.
 */
final class Refill {
    private static final long UNIT = 1 << 10;

    /** Pieces are worth a little more the longer they are, the longest by this part: they are harder to place. */
    private static final double LONG = 0.07;

    private final Model model;
    private final Filling filling;
    private final Effort effort;
    private final long[] worth;
    private final long[] threshold;

    Refill(Model model, Effort effort) {
        this.model = model;
        this.effort = effort;
        filling = new Filling(model);
        worth = new long[model.kinds()];
        threshold = new long[model.stocks()];
    }

    /**
     * @param passes how often to begin at most
     * @return the plan done, or as it was
     */
    Rest finish(Rest begun, int passes) {
        for (int kind = 0; kind < worth.length; kind++) {
            worth[kind] = model.weight[kind] * UNIT;
        }
        for (int pass = 0; pass < passes && !effort.isSpent(); pass++) {
            Rest rest = begun.copy();
            fill(rest);
            if (rest.isDone()) {
                return rest;
            }
            for (int kind = 0; kind < worth.length; kind++) {
                worth[kind] += worth[kind] / 16 * Math.min(4, rest.left[kind]);
            }
        }
        return begun;
    }

    private void fill(Rest rest) {
        boolean any = true;
        while (any && !rest.isDone()) {
            for (int stock = 0; stock < threshold.length; stock++) {
                threshold[stock] = rest.boards[stock] > 0 ? 0 : Filling.GREATEST;
            }
            long[] yield = filling.search(worth, rest.left, threshold);
            effort.spend(1 + filling.work() / 1000);
            Pattern fullest = fullest(yield);
            any = fullest != null;
            if (any) {
                learn(fullest);
                rest.take(fullest);
            }
        }
    }

    private Pattern fullest(long[] yield) {
        Pattern fullest = null;
        int least = Integer.MAX_VALUE;
        for (int stock = 0; stock < yield.length; stock++) {
            if (yield[stock] > threshold[stock]) {
                Pattern pattern = filling.pattern(stock);
                int waste = waste(pattern);
                if (waste <= least) {
                    least = waste;
                    fullest = pattern;
                }
            }
        }
        return fullest;
    }

    private int waste(Pattern pattern) {
        int waste = model.room[pattern.stock()];
        for (int i = 0; i < pattern.kinds().length; i++) {
            waste -= model.weight[pattern.kinds()[i]] * pattern.counts()[i];
        }
        return waste;
    }

    /** What a piece is worth moves a part of the way toward what it took of the board, the waste shared out. */
    private void learn(Pattern pattern) {
        int room = model.room[pattern.stock()];
        double share = (double) room / (room - waste(pattern));
        for (int kind : pattern.kinds()) {
            double harder = 1 + LONG * model.weight[kind] / model.weight[0];
            double due = UNIT * share * harder * model.weight[kind];
            worth[kind] += ((long) due - worth[kind]) / 4;
        }
    }
}
