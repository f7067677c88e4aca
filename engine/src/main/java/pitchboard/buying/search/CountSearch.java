package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Finds the cheapest plan. Cost depends only on how many boards of each stock are taken, so the search branches on these
 * counts: the relaxation bounds every part, the part with the lowest bound goes first, and where the relaxation takes
 * whole boards only, {@link Packing} decides whether they yield the pieces.
 */
final class CountSearch {
    private static final double WHOLE = 1e-5;
    private static final int PATIENCE = 3000;

    private final Model model;
    private final Effort effort;
    private final Relaxation relaxation;
    private final Greedy greedy;
    private final Packing packing;
    private final Cuts cuts;
    private final Best best;
    private final PriorityQueue<Node> open = new PriorityQueue<>();
    private final List<int[]> tried = new ArrayList<>();
    private int numbered;

    /** No plan given up costs less. */
    private long givenUp = Long.MAX_VALUE;

    CountSearch(Model model, Effort effort, Best best) {
        this.model = model;
        this.effort = effort;
        this.best = best;
        relaxation = new Relaxation(model, effort);
        greedy = new Greedy(model, effort);
        packing = new Packing(model, relaxation, effort);
        cuts = new Cuts(model);
    }

    /** Searches until the best plan is proved or the effort is spent; answers what no plan undercuts. */
    long run() {
        int[] least = new int[model.stocks()];
        for (int stock = 0; stock < least.length; stock++) {
            least[stock] = model.isFree(stock) ? model.most[stock] : 0;
        }
        long[] lengths = new long[model.kinds()];
        for (int kind = 0; kind < lengths.length; kind++) {
            lengths[kind] = model.weight[kind];
        }
        best.offer(greedy.complete(List.of(), lengths));
        push(least, model.most, 0);
        while (!open.isEmpty() && open.peek().bound() < best.cost() && !effort.isSpent()) {
            visit(open.poll());
        }
        long bound =
                open.isEmpty() ? best.cost() : Math.min(best.cost(), open.peek().bound());
        return Math.min(bound, givenUp);
    }

    private void push(int[] least, int[] most, long bound) {
        open.add(new Node(least.clone(), most.clone(), bound, ++numbered));
    }

    private void visit(Node node) {
        int[] least = node.least().clone();
        int[] most = node.most().clone();
        long bound = cuts.tighten(least, most, node.bound(), best.cost());
        if (bound >= best.cost()) {
            return;
        }
        Relaxation.Answer answer = relaxation.solve(model.demand, least, most, best.cost());
        if (relaxation.prices() != null) {
            cuts.add(relaxation.prices());
        }
        if (answer == Relaxation.Answer.OVER) {
            return;
        }
        bound = Math.max(bound, cuts.roundedUp(relaxation.bound(), least));
        if (answer == Relaxation.Answer.STUCK) {
            halve(least, most, bound);
            return;
        }
        Fractions fractions = Fractions.of(model, relaxation);
        best.offer(greedy.complete(
                fractions.wholePatterns(), positive(relaxation.prices().worth())));
        if (bound < best.cost()) {
            branch(least, most, bound, fractions.boards());
        }
    }

    private static long[] positive(long[] worth) {
        long[] positive = new long[worth.length];
        for (int kind = 0; kind < worth.length; kind++) {
            positive[kind] = Math.max(1, worth[kind]);
        }
        return positive;
    }

    private void branch(int[] least, int[] most, long bound, double[] boards) {
        int split = -1;
        double widest = 0;
        int[] whole = new int[boards.length];
        for (int stock = 0; stock < boards.length; stock++) {
            whole[stock] = (int) Math.floor(boards[stock] + 0.5);
            double off = Math.abs(boards[stock] - whole[stock]);
            if (off > WHOLE && off * model.cost[stock] > widest) {
                widest = off * model.cost[stock];
                split = stock;
            }
        }
        if (split >= 0) {
            split(least, most, split, (int) Math.floor(boards[split]), bound);
            return;
        }
        pack(whole, bound);
        if (bound < best.cost()) {
            around(least, most, whole, bound);
        }
    }

    private void split(int[] least, int[] most, int stock, int below, long bound) {
        int[] fewer = most.clone();
        fewer[stock] = below;
        push(least, fewer, bound);
        int[] more = least.clone();
        more[stock] = below + 1;
        push(more, most, bound);
    }

    private void pack(int[] whole, long bound) {
        if (tried.stream().anyMatch(each -> Arrays.equals(each, whole))) {
            return;
        }
        tried.add(whole);
        Packing.Answer packed = packing.search(whole, List.of(relaxation.prices()), PATIENCE);
        best.offer(packed.patterns());
        if (packed.verdict() == Packing.Verdict.GAVE_UP) {
            givenUp = Math.min(givenUp, bound);
        }
    }

    /** These boards are decided; what is left has fewer or more of some stock. */
    private void around(int[] least, int[] most, int[] whole, long bound) {
        int[] low = least.clone();
        int[] high = most.clone();
        for (int stock = 0; stock < whole.length; stock++) {
            if (whole[stock] > low[stock]) {
                int[] fewer = high.clone();
                fewer[stock] = whole[stock] - 1;
                push(low, fewer, bound);
            }
            if (whole[stock] < high[stock]) {
                int[] more = low.clone();
                more[stock] = whole[stock] + 1;
                push(more, high, bound);
            }
            low[stock] = whole[stock];
            high[stock] = whole[stock];
        }
    }

    /** Without a solution to go by: two halves, or the boards themselves when nothing is left to halve. */
    private void halve(int[] least, int[] most, long bound) {
        if (effort.isSpent()) {
            push(least, most, bound);
            return;
        }
        int widest = 0;
        for (int stock = 0; stock < least.length; stock++) {
            widest = most[stock] - least[stock] > most[widest] - least[widest] ? stock : widest;
        }
        if (most[widest] > least[widest]) {
            split(least, most, widest, (least[widest] + most[widest]) >>> 1, bound);
        } else if (tried.stream().noneMatch(each -> Arrays.equals(each, least))) {
            tried.add(least.clone());
            Packing.Answer packed = packing.search(least, List.of(), PATIENCE);
            best.offer(packed.patterns());
            if (packed.verdict() == Packing.Verdict.GAVE_UP) {
                givenUp = Math.min(givenUp, bound);
            }
        }
    }
}
