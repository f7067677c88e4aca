package pitchboard.buying.relaxing;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Supply;

/**
 * A problem made ready for the search. One kerf is added to every piece and to every board, so that a board is full when
 * the sum says so. Equal lengths are one kind. Kinds go from long to short, stocks from short to long. A cost is the
 * price times {@link #boardWeight} plus one for a board that has a price: among equal prices fewer boards cost less.
 */
public final class Model {
    /** Lengths of pieces and boards, kerf added, divided by what divides every piece. */
    public final int[] weight;

    public final int[] room;
    public final int[] demand;

    /** How many boards of a stock there are, never more than could be of use. */
    public final int[] most;

    public final long[] cost;
    public final long boardWeight;

    /** What divides every price; 1 when all are zero. */
    public final long coin;

    /** The problem's demands that a kind stands for, and the supply that a stock is. */
    public final List<List<Integer>> demandsOf;

    public final int[] supplyOf;

    /** The problem's ticks in one tick of this model. */
    public final long tick;

    public Model(CutProblem problem) {
        if (problem.demands().isEmpty()) {
            throw new IllegalArgumentException("nothing to cut");
        }
        demandsOf = kinds(problem);
        long common = 0;
        for (Demand each : problem.demands()) {
            common = gcd(common, each.length() + problem.kerf());
        }
        tick = common;
        int kinds = demandsOf.size();
        weight = new int[kinds];
        demand = new int[kinds];
        for (int kind = 0; kind < kinds; kind++) {
            List<Integer> demands = demandsOf.get(kind);
            weight[kind] =
                    Math.toIntExact((problem.demands().get(demands.get(0)).length() + problem.kerf()) / tick);
            demand[kind] = demands.stream()
                    .mapToInt(index -> problem.demands().get(index).quantity())
                    .sum();
        }
        supplyOf = stocks(problem, tick * weight[kinds - 1]);
        int stocks = supplyOf.length;
        room = new int[stocks];
        most = new int[stocks];
        cost = new long[stocks];
        boardWeight = problem.pieces() + 1L;
        long divisor = 0;
        for (int stock = 0; stock < stocks; stock++) {
            Supply supply = problem.supplies().get(supplyOf[stock]);
            room[stock] = (int) Math.min((supply.length() + problem.kerf()) / tick, heaviest());
            most[stock] = Math.min(supply.onHand(), problem.pieces());
            cost[stock] = Math.addExact(Math.multiplyExact(supply.price(), boardWeight), supply.price() > 0 ? 1 : 0);
            divisor = gcd(divisor, supply.price());
        }
        coin = Math.max(1, divisor);
    }

    private long heaviest() {
        long sum = 0;
        for (int kind = 0; kind < weight.length; kind++) {
            sum += (long) weight[kind] * demand[kind];
        }
        return Math.min(sum, Integer.MAX_VALUE / 2);
    }

    public int kinds() {
        return weight.length;
    }

    public int stocks() {
        return room.length;
    }

    public boolean isFree(int stock) {
        return cost[stock] == 0;
    }

    private static List<List<Integer>> kinds(CutProblem problem) {
        List<Integer> order = new ArrayList<>();
        for (int index = 0; index < problem.demands().size(); index++) {
            order.add(index);
        }
        order.sort((a, b) -> Long.compare(
                problem.demands().get(b).length(), problem.demands().get(a).length()));
        List<List<Integer>> kinds = new ArrayList<>();
        long last = -1;
        for (int index : order) {
            long length = problem.demands().get(index).length();
            if (length != last) {
                kinds.add(new ArrayList<>());
                last = length;
            }
            kinds.get(kinds.size() - 1).add(index);
        }
        return kinds;
    }

    /** The supplies that can hold at least the shortest piece, from short to long. */
    private static int[] stocks(CutProblem problem, long shortestWithKerf) {
        List<Integer> order = new ArrayList<>();
        for (int index = 0; index < problem.supplies().size(); index++) {
            Supply supply = problem.supplies().get(index);
            if (supply.length() + problem.kerf() >= shortestWithKerf && supply.onHand() > 0) {
                order.add(index);
            }
        }
        order.sort((a, b) -> {
            int byLength = Long.compare(
                    problem.supplies().get(a).length(),
                    problem.supplies().get(b).length());
            return byLength != 0
                    ? byLength
                    : Long.compare(
                            problem.supplies().get(a).price(),
                            problem.supplies().get(b).price());
        });
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    static long gcd(long a, long b) {
        long x = a;
        long y = b;
        while (y != 0) {
            long rest = x % y;
            x = y;
            y = rest;
        }
        return Math.abs(x);
    }
}
