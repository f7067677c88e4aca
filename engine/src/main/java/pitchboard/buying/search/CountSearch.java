package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Fractions;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Relaxation;

/**
 * Finds the cheapest plan. Cost depends only on how many boards of each stock are taken, so the search branches on these
 * counts. Prices learnt from the relaxation bound every part; where the cheapest counts left are whole, the relaxation
 * says whether these boards yield all pieces at least in fractions, which refutes them with new prices, or else
 * {@link Packing} tries to cut them. Counts that are neither refuted nor cut at once are settled at the end.
 */
final class CountSearch {
    private static final double WHOLE = 1e-5;
    private static final int PATIENCE = 3000;
    private static final int FILTERS = 3;

    /** Looking at a part takes as much work as so many exchanges, and so many of these one step of effort. */
    private static final int LOOK = 5;

    private static final int A_STEP = 20;

    private final Model model;
    private final Effort effort;
    private final Relaxation relaxation;
    private final Greedy greedy;
    private final Packing packing;
    private final KeptPrices kept;
    private final CountBound counting;
    private final Best best;
    private final PriorityQueue<Node> open = new PriorityQueue<>();
    private final PriorityQueue<Node> doubtful = new PriorityQueue<>();
    private final List<int[]> tried = new ArrayList<>();
    private int numbered;
    private int work;

    CountSearch(Model model, Effort effort, Best best) {
        this.model = model;
        this.effort = effort;
        this.best = best;
        relaxation = new Relaxation(model, effort);
        greedy = new Greedy(model, effort);
        packing = new Packing(model, relaxation, effort);
        kept = new KeptPrices(model);
        counting = new CountBound(model, kept);
    }

    /** Searches until the best plan is proved or the effort is spent; answers what no plan undercuts. */
    long run() {
        int[] least = new int[model.stocks()];
        for (int stock = 0; stock < least.length; stock++) {
            least[stock] = model.isFree(stock) ? model.most[stock] : 0;
        }
        long bound = begin(least, model.most);
        open.add(node(least, model.most, bound));
        while (!open.isEmpty() && open.peek().bound() < best.cost() && !effort.isSpent()) {
            Node next = open.poll();
            while (next != null && !effort.isSpent()) {
                next = visit(next);
            }
            if (next != null) {
                open.add(next);
            }
        }
        bound = open.isEmpty() ? best.cost() : Math.min(best.cost(), open.peek().bound());
        long unsettled = settle();
        // What was in doubt may have turned out cheaper than what was best before.
        return Math.min(Math.min(bound, unsettled), best.cost());
    }

    private Node node(int[] least, int[] most, long bound) {
        return new Node(least.clone(), most.clone(), bound, ++numbered);
    }

    /** A first plan and the first prices; answers their bound. */
    private long begin(int[] least, int[] most) {
        long[] lengths = new long[model.kinds()];
        for (int kind = 0; kind < lengths.length; kind++) {
            lengths[kind] = model.weight[kind];
        }
        best.offer(greedy.complete(List.of(), lengths));
        Relaxation.Answer answer = relaxation.solve(model.demand, least, most, best.cost());
        learn();
        if (answer == Relaxation.Answer.OVER) {
            return best.cost();
        }
        if (answer == Relaxation.Answer.SOLVED) {
            Fractions fractions = Fractions.of(model, relaxation);
            best.offer(greedy.complete(
                    fractions.wholePatterns(), positive(relaxation.prices().worth())));
        }
        return relaxation.bound();
    }

    private void learn() {
        if (relaxation.prices() != null) {
            kept.add(relaxation.prices());
        }
    }

    private static long[] positive(long[] worth) {
        long[] positive = new long[worth.length];
        for (int kind = 0; kind < worth.length; kind++) {
            positive[kind] = Math.max(1, worth[kind]);
        }
        return positive;
    }

    /** Answers the part to go on with at once, none of those open; null for the open one with the lowest bound. */
    private Node visit(Node node) {
        if (node.bound() >= best.cost()) {
            return null;
        }
        int[] least = node.least().clone();
        int[] most = node.most().clone();
        int before = counting.work();
        long bound = Math.max(node.bound(), counting.bound(least, most, best.cost()));
        work += LOOK + counting.work() - before;
        effort.spend(work / A_STEP);
        work %= A_STEP;
        return bound >= best.cost() ? null : branch(node(least, most, bound), counting.counts());
    }

    private Node branch(Node node, double[] counts) {
        int split = -1;
        double widest = 0;
        int[] whole = new int[counts.length];
        for (int stock = 0; stock < counts.length; stock++) {
            whole[stock] = (int) Math.floor(counts[stock] + 0.5);
            double off = Math.abs(counts[stock] - whole[stock]);
            if (off > WHOLE && off * model.cost[stock] > widest) {
                widest = off * model.cost[stock];
                split = stock;
            }
        }
        return split >= 0 ? split(node, split, counts[split]) : decide(node, whole);
    }

    /** Fewer boards of the stock, or more: goes on with what is nearer. */
    private Node split(Node node, int stock, double count) {
        int below = (int) Math.floor(count);
        int[] fewer = node.most().clone();
        fewer[stock] = below;
        int[] more = node.least().clone();
        more[stock] = below + 1;
        Node low = node(node.least(), fewer, node.bound());
        Node high = node(more, node.most(), node.bound());
        boolean up = count - below >= 0.5;
        open.add(up ? low : high);
        return up ? high : low;
    }

    /** Whether these boards yield the pieces; answers the part itself when new prices say more about it. */
    private Node decide(Node node, int[] whole) {
        if (tried.stream().noneMatch(each -> Arrays.equals(each, whole))) {
            tried.add(whole);
            Relaxation.Answer answer = relaxation.solve(model.demand, whole, whole, Long.MAX_VALUE);
            learn();
            if (answer == Relaxation.Answer.OVER) {
                return node;
            }
            Packing.Answer packed = answer == Relaxation.Answer.SOLVED ? packing.quick(whole) : Packing.Answer.GAVE_UP;
            best.offer(packed.patterns());
            if (packed.verdict() == Packing.Verdict.GAVE_UP) {
                doubtful.add(node(whole, whole, node.bound()));
            }
        }
        if (node.bound() < best.cost()) {
            around(node, whole);
        }
        return null;
    }

    /** These boards are decided; what is left has fewer or more of some stock. */
    private void around(Node node, int[] whole) {
        int[] low = node.least().clone();
        int[] high = node.most().clone();
        for (int stock = 0; stock < whole.length; stock++) {
            if (whole[stock] > low[stock]) {
                int[] fewer = high.clone();
                fewer[stock] = whole[stock] - 1;
                open.add(node(low, fewer, node.bound()));
            }
            if (whole[stock] < high[stock]) {
                int[] more = low.clone();
                more[stock] = whole[stock] + 1;
                open.add(node(more, high, node.bound()));
            }
            low[stock] = whole[stock];
            high[stock] = whole[stock];
        }
    }

    /** Tries hard at the counts in doubt that are still worth it; answers what those left in doubt do not undercut. */
    private long settle() {
        long bound = Long.MAX_VALUE;
        while (!doubtful.isEmpty() && doubtful.peek().bound() < best.cost()) {
            Node node = doubtful.poll();
            Packing.Answer packed = Packing.Answer.GAVE_UP;
            if (!effort.isSpent()) {
                packed = packing.deep(node.least(), kept.tightest(node.least(), FILTERS), PATIENCE);
                best.offer(packed.patterns());
            }
            if (packed.verdict() == Packing.Verdict.GAVE_UP) {
                bound = Math.min(bound, node.bound());
            }
        }
        return bound;
    }
}
