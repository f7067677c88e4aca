package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * Reverse Cuthill-McKee: the order in which unknowns are numbered, so that those that meet stand close together.
 *
 * <p>E. Cuthill and J. McKee, Reducing the bandwidth of sparse symmetric matrices, Proc. 24th ACM Nat. Conf., 1969; the
 * starting vertex by J. A. George and J. W. H. Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981
 * (both from memory).
 */
public final class Ordering {
    private final Graph graph;
    private final int[] level;
    private final int[] queue;
    private int queued;

    private Ordering(Graph graph) {
        this.graph = graph;
        this.level = new int[graph.vertices()];
        this.queue = new int[graph.vertices()];
    }

    /**
     * All vertices, each once, in a good order. The same groups always give the same order.
     *
     * @param vertices how many there are, counted from 0
     * @param groups vertices that all meet each other
     */
    public static int[] of(int vertices, int[][] groups) {
        return new Ordering(Graph.of(vertices, groups)).reversed();
    }

    private int[] reversed() {
        int[] order = new int[graph.vertices()];
        boolean[] placed = new boolean[order.length];
        int count = 0;
        for (int vertex = 0; vertex < order.length; vertex++) {
            if (!placed[vertex]) {
                layers(farEnd(vertex));
                for (int k = 0; k < queued; k++) {
                    order[count++] = queue[k];
                    placed[queue[k]] = true;
                }
            }
        }
        for (int i = 0, j = order.length - 1; i < j; i++, j--) {
            int kept = order[i];
            order[i] = order[j];
            order[j] = kept;
        }
        return order;
    }

    /** A vertex from which the most layers are needed to reach everything. */
    private int farEnd(int from) {
        int vertex = from;
        int depth = layers(vertex);
        while (true) {
            int next = leastBusyOfLastLayer(depth);
            int deeper = layers(next);
            if (deeper <= depth) {
                return next;
            }
            depth = deeper;
        }
    }

    private int leastBusyOfLastLayer(int depth) {
        int best = queue[queued - 1];
        for (int k = queued - 1; k >= 0 && level[queue[k]] == depth; k--) {
            if (graph.degree(queue[k]) < graph.degree(best)) {
                best = queue[k];
            }
        }
        return best;
    }

    /** Fills the queue with everything that can be reached, layer by layer; says how deep the last layer lies. */
    private int layers(int root) {
        Arrays.fill(level, -1);
        queued = 0;
        enqueue(root, 0);
        for (int k = 0; k < queued; k++) {
            int vertex = queue[k];
            int first = queued;
            for (int n = graph.start[vertex]; n < graph.start[vertex + 1]; n++) {
                if (level[graph.neighbours[n]] < 0) {
                    enqueue(graph.neighbours[n], level[vertex] + 1);
                }
            }
            sortByDegree(first);
        }
        return level[queue[queued - 1]];
    }

    private void enqueue(int vertex, int depth) {
        level[vertex] = depth;
        queue[queued++] = vertex;
    }

    /** The few that were just added: by insertion, so that equals keep their order. */
    private void sortByDegree(int first) {
        for (int i = first + 1; i < queued; i++) {
            int vertex = queue[i];
            int j = i - 1;
            while (j >= first && graph.degree(queue[j]) > graph.degree(vertex)) {
                queue[j + 1] = queue[j];
                j--;
            }
            queue[j + 1] = vertex;
        }
    }
}
