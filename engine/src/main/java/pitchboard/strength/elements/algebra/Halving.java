package pitchboard.strength.elements.algebra;

/**
 * Groups in the order of four directions, and where a stretch of them is best cut in two: where the halves share few
 * vertices and are about alike. A stretch holds the same groups in every direction.
 */
final class Halving {
    /** Directions as shares of x and y: level, plumb, and both ways between. */
    private static final int[][] DIRECTIONS = {{1, 0}, {0, 1}, {1, 1}, {1, -1}};

    /** A cut leaves at least a fifth on either side. */
    private static final double FARTHEST_OFF = 0.3;

    /** A cut at the edge of what is allowed counts as if this much more were shared. */
    private static final double PENALTY = 2;

    private final int[][] groups;
    private final int[][] sorted = new int[DIRECTIONS.length][];
    private final int[] lastSeen;
    private final int[] seen;
    private int round;
    private final boolean[] isBefore;
    private final int[] spare;

    private double leastCost;
    private int bestDirection;
    private int bestCut;

    Halving(int vertices, int[][] groups, double[] x, double[] y) {
        this.groups = groups;
        this.lastSeen = new int[vertices];
        this.seen = new int[vertices];
        this.isBefore = new boolean[groups.length];
        this.spare = new int[groups.length];
        double[] along = new double[groups.length];
        for (int d = 0; d < DIRECTIONS.length; d++) {
            sorted[d] = new int[groups.length];
            for (int group = 0; group < groups.length; group++) {
                sorted[d][group] = group;
                along[group] = DIRECTIONS[d][0] * x[group] + DIRECTIONS[d][1] * y[group];
            }
            sort(sorted[d], along);
        }
    }

    /** Merges longer and longer stretches; equals keep their order. */
    private void sort(int[] what, double[] by) {
        int[] from = what;
        int[] to = spare;
        for (int length = 1; length < what.length; length *= 2) {
            for (int start = 0; start < what.length; start += 2 * length) {
                int middle = Math.min(start + length, what.length);
                int end = Math.min(start + 2 * length, what.length);
                int a = start;
                int b = middle;
                for (int k = start; k < end; k++) {
                    boolean isFirst = b == end || (a < middle && by[from[a]] <= by[from[b]]);
                    to[k] = isFirst ? from[a++] : from[b++];
                }
            }
            int[] kept = from;
            from = to;
            to = kept;
        }
        copy(from, what, 0, what.length);
    }

    private static void copy(int[] from, int[] to, int start, int length) {
        for (int i = 0; i < length; i++) {
            to[start + i] = from[i];
        }
    }

    /** The group at a place of a stretch. */
    int group(int place) {
        return sorted[0][place];
    }

    /**
     * Puts the two halves of a stretch one after the other.
     *
     * @param placed vertices that do not count, since they are cut away already
     * @return where the second half begins
     */
    int cut(int from, int to, boolean[] placed) {
        leastCost = Double.MAX_VALUE;
        for (int direction = 0; direction < DIRECTIONS.length; direction++) {
            tryCuts(direction, from, to, placed);
        }
        for (int i = from; i < to; i++) {
            isBefore[sorted[bestDirection][i]] = i < bestCut;
        }
        for (int[] way : sorted) {
            part(way, from, to);
        }
        return bestCut;
    }

    private void tryCuts(int direction, int from, int to, boolean[] placed) {
        int[] way = sorted[direction];
        for (int i = from; i < to; i++) {
            for (int vertex : groups[way[i]]) {
                lastSeen[vertex] = i;
            }
        }
        round++;
        double half = (to - from) / 2.0;
        int shared = 0;
        for (int cut = from + 1; cut < to; cut++) {
            shared += change(groups[way[cut - 1]], cut - 1, placed);
            double off = Math.abs(cut - from - half) / (to - from);
            double cost = shared * (1 + PENALTY * off);
            if (cost < leastCost && (off <= FARTHEST_OFF || to - from < 4)) {
                leastCost = cost;
                bestDirection = direction;
                bestCut = cut;
            }
        }
    }

    /** How many more vertices are shared once a group has gone over to the first half. */
    private int change(int[] group, int place, boolean[] placed) {
        int change = 0;
        for (int vertex : group) {
            if (placed[vertex]) {
                continue;
            }
            if (seen[vertex] != round) {
                seen[vertex] = round;
                change += lastSeen[vertex] > place ? 1 : 0;
            } else if (lastSeen[vertex] == place) {
                lastSeen[vertex] = -1;
                change--;
            }
        }
        return change;
    }

    private void part(int[] way, int from, int to) {
        int before = from;
        int after = 0;
        for (int i = from; i < to; i++) {
            if (isBefore[way[i]]) {
                way[before++] = way[i];
            } else {
                spare[after++] = way[i];
            }
        }
        copy(spare, way, before, after);
    }
}
