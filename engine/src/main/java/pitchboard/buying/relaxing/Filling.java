package pitchboard.buying.relaxing;

import java.util.Arrays;

/**
 * Finds the worthiest filling of every stock at once, in whole numbers. Kinds are added one after the other; of all sums
 * of pieces only those are kept that no shorter sum outdoes and that could still lift some stock over its threshold.
 */
public final class Filling {
    /** No filling is worth so much. */
    public static final long GREATEST = 1L << 61;

    private final Model model;
    private final int longest;
    private final Integer[] order;
    private final States now = new States();
    private final States next = new States();

    /** Each node adds {@code count} pieces of {@code kind} to the node before. */
    private int[] before = new int[1024];

    private int[] kind = new int[1024];
    private int[] count = new int[1024];
    private int nodes;
    private States current = now;

    public Filling(Model model) {
        this.model = model;
        longest = model.stocks() == 0 ? 0 : model.room[model.stocks() - 1];
        order = new Integer[model.kinds()];
    }

    /** How many sums of pieces the last search looked at. */
    public int work() {
        return nodes;
    }

    /**
     * Searches for fillings worth more than the threshold of their stock.
     *
     * @param worth of each kind, zero or more
     * @param atMost how many pieces of each kind a board may take
     * @return the worth of the worthiest filling of each stock, or the threshold where none is above it
     */
    public long[] search(long[] worth, int[] atMost, long[] threshold) {
        int kinds = sortByWorth(worth);
        long[] above = raised(threshold, worth, atMost, kinds);
        current = now;
        States spare = next;
        current.clear();
        current.add(0, 0, -1);
        nodes = 0;
        long[] rest = restRatios(worth, kinds);
        long[] least = new long[model.stocks()];
        for (int place = 0; place < kinds && current.size > 0; place++) {
            int each = order[place];
            int left = Math.min(atMost[each], longest / model.weight[each]);
            for (int step = 1; left > 0; step *= 2) {
                int taken = Math.min(step, left);
                left -= taken;
                long ratio = leastNeeded(above, rest[left > 0 ? place : place + 1], least);
                spare.clear();
                merge(current, spare, each, taken, worth[each] * taken, ratio, least);
                States old = current;
                current = spare;
                spare = old;
            }
        }
        return best(threshold);
    }

    /** The thresholds, raised to just below what the worthiest kinds one after the other make of each stock. */
    private long[] raised(long[] threshold, long[] worth, int[] atMost, int kinds) {
        long[] raised = threshold.clone();
        for (int stock = 0; stock < raised.length; stock++) {
            int room = model.room[stock];
            long sum = 0;
            for (int place = 0; place < kinds; place++) {
                int each = order[place];
                int count = Math.min(atMost[each], room / model.weight[each]);
                room -= count * model.weight[each];
                sum += count * worth[each];
            }
            raised[stock] = Math.max(raised[stock], sum - 1);
        }
        return raised;
    }

    private int sortByWorth(long[] worth) {
        int kinds = 0;
        for (int each = 0; each < worth.length; each++) {
            if (worth[each] > 0) {
                order[kinds++] = each;
            }
        }
        Arrays.sort(order, 0, kinds, (a, b) -> {
            int byRatio = Double.compare((double) worth[b] / model.weight[b], (double) worth[a] / model.weight[a]);
            return byRatio != 0 ? byRatio : Integer.compare(a, b);
        });
        return kinds;
    }

    /** For each place in the order, a whole number that no kind from there on is worth more than, per tick. */
    private long[] restRatios(long[] worth, int kinds) {
        long[] rest = new long[kinds + 1];
        for (int place = kinds - 1; place >= 0; place--) {
            int each = order[place];
            rest[place] = Math.max(rest[place + 1], -Math.floorDiv(-worth[each], (long) model.weight[each]));
        }
        return rest;
    }

    /**
     * For each stock, the least over it and all longer ones of {@code threshold - ratio * room}; answers the ratio, or
     * nothing needed and 0 where these numbers would be too great.
     */
    private long leastNeeded(long[] threshold, long ratio, long[] least) {
        if (ratio > GREATEST / longest) {
            Arrays.fill(least, Long.MIN_VALUE);
            return 0;
        }
        long smallest = Long.MAX_VALUE;
        for (int stock = least.length - 1; stock >= 0; stock--) {
            smallest = Math.min(smallest, threshold[stock] - ratio * model.room[stock]);
            least[stock] = smallest;
        }
        return ratio;
    }

    /** Joins the sums with and without the new pieces, in the order of their length. */
    private void merge(States from, States to, int each, int taken, long value, long ratio, long[] least) {
        int weight = model.weight[each] * taken;
        int with = 0;
        int without = 0;
        int stock = 0;
        long highest = -1;
        while (without < from.size || with < from.size) {
            long withEnd = with < from.size ? (long) from.weight[with] + weight : Long.MAX_VALUE;
            boolean old = without < from.size && from.weight[without] <= withEnd;
            int at = old ? without++ : with++;
            long end = old ? from.weight[at] : withEnd;
            if (end > longest) {
                break;
            }
            long sum = old ? from.value[at] : from.value[at] + value;
            while (model.room[stock] < end) {
                stock++;
            }
            if (sum > highest && sum - ratio * end > least[stock]) {
                highest = sum;
                to.add((int) end, sum, old ? from.node[at] : node(from.node[at], each, taken));
            }
        }
    }

    private int node(int parent, int each, int taken) {
        if (nodes == before.length) {
            before = Arrays.copyOf(before, 2 * nodes);
            kind = Arrays.copyOf(kind, 2 * nodes);
            count = Arrays.copyOf(count, 2 * nodes);
        }
        before[nodes] = parent;
        kind[nodes] = each;
        count[nodes] = taken;
        return nodes++;
    }

    private long[] best(long[] threshold) {
        long[] best = threshold.clone();
        for (int stock = 0; stock < best.length; stock++) {
            int place = current.lastWithin(model.room[stock]);
            if (place >= 0) {
                best[stock] = Math.max(best[stock], current.value[place]);
            }
        }
        return best;
    }

    /** The worthiest filling that the last search found for the stock; only where it was above the threshold. */
    public Pattern pattern(int stock) {
        int[] counts = new int[model.kinds()];
        int used = 0;
        for (int node = current.node[current.lastWithin(model.room[stock])]; node >= 0; node = before[node]) {
            used += counts[kind[node]] == 0 ? 1 : 0;
            counts[kind[node]] += count[node];
        }
        return Patterns.of(stock, counts, used);
    }

    /** Sums of pieces in the order of their length, each worth more than the one before. */
    private static final class States {
        private int[] weight = new int[256];
        private long[] value = new long[256];
        private int[] node = new int[256];
        private int size;

        void clear() {
            size = 0;
        }

        void add(int end, long sum, int last) {
            if (size == weight.length) {
                weight = Arrays.copyOf(weight, 2 * size);
                value = Arrays.copyOf(value, 2 * size);
                node = Arrays.copyOf(node, 2 * size);
            }
            weight[size] = end;
            value[size] = sum;
            node[size++] = last;
        }

        int lastWithin(int room) {
            int low = 0;
            int high = size;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (weight[middle] <= room) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low - 1;
        }
    }
}
