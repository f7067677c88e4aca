package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * The order in which unknowns are worked off: what meets is cut into halves again and again, and what both halves share
 * comes after either. So a long strip is cut across, and few numbers fill up.
 *
 * <p>Vertices stand in blocks, children before parents. J. A. George, Nested dissection of a regular finite element mesh,
 * SIAM J. Numer. Anal. 10 (1973) 345 (from memory), here with the triangles halved by where they lie.
 */
public final class Dissection {
    private static final int NONE = -1;
    /** Groups that are not cut any further: from 2 to 8 the time is much the same. */
    private static final int SMALLEST = 5;

    private final int[][] groups;
    private final Halving halving;
    private final int[] seen;
    private final boolean[] placed;
    private final int[] order;
    private int ordered;
    private int round;

    /** All blocks: where each ends in the order, its parent, and the later vertices that it meets. */
    private int[] end = new int[64];

    private int[] parent = new int[64];
    private int[][] beyond = new int[64][];
    private int blocks;

    private Dissection(int vertices, int[][] groups, double[] x, double[] y) {
        this.groups = groups;
        this.halving = new Halving(vertices, groups, x, y);
        this.seen = new int[vertices];
        this.placed = new boolean[vertices];
        this.order = new int[vertices];
    }

    /**
     * Cuts what meets. The same groups always give the same order; a vertex of no group stands at the end.
     *
     * @param vertices how many there are, counted from 0
     * @param groups vertices that all meet each other
     * @param x where each group lies, and y likewise
     */
    public static Dissection of(int vertices, int[][] groups, double[] x, double[] y) {
        Dissection dissection = new Dissection(vertices, groups, x, y);
        if (groups.length > 0) {
            dissection.cut(0, groups.length);
        }
        for (int vertex = 0; vertex < vertices; vertex++) {
            if (!dissection.placed[vertex]) {
                dissection.close(new int[] {vertex}, new int[0]);
            }
        }
        return dissection;
    }

    /** Cuts a stretch of the groups; says which block is the last of it. */
    private int cut(int from, int to) {
        if (to - from <= SMALLEST) {
            int[] all = verticesOf(from, to);
            int[] own = Arrays.stream(all).filter(vertex -> !placed[vertex]).toArray();
            return close(
                    own, Arrays.stream(all).filter(vertex -> placed[vertex]).toArray());
        }
        int middle = halving.cut(from, to, placed);
        int[] shared = sharedBy(from, middle, to);
        for (int vertex : shared) {
            placed[vertex] = true;
        }
        int first = cut(from, middle);
        int second = cut(middle, to);
        int block = close(shared, without(shared, beyond[first], beyond[second]));
        parent[first] = block;
        parent[second] = block;
        return block;
    }

    private int[] verticesOf(int from, int to) {
        round++;
        int[] found = new int[8];
        int count = 0;
        for (int i = from; i < to; i++) {
            for (int vertex : groups[halving.group(i)]) {
                if (seen[vertex] != round) {
                    seen[vertex] = round;
                    found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
                    found[count++] = vertex;
                }
            }
        }
        return Arrays.copyOf(found, count);
    }

    private int[] sharedBy(int from, int middle, int to) {
        round++;
        for (int i = from; i < middle; i++) {
            for (int vertex : groups[halving.group(i)]) {
                seen[vertex] = round;
            }
        }
        int[] shared = new int[16];
        int count = 0;
        for (int i = middle; i < to; i++) {
            for (int vertex : groups[halving.group(i)]) {
                if (seen[vertex] == round && !placed[vertex]) {
                    seen[vertex] = 0;
                    shared = count == shared.length ? Arrays.copyOf(shared, 2 * count) : shared;
                    shared[count++] = vertex;
                }
            }
        }
        return Arrays.copyOf(shared, count);
    }

    private int[] without(int[] own, int[] a, int[] b) {
        round++;
        for (int vertex : own) {
            seen[vertex] = round;
        }
        int[] rest = new int[a.length + b.length];
        int count = 0;
        for (int i = 0; i < rest.length; i++) {
            int vertex = i < a.length ? a[i] : b[i - a.length];
            if (seen[vertex] != round) {
                seen[vertex] = round;
                rest[count++] = vertex;
            }
        }
        return Arrays.copyOf(rest, count);
    }

    private int close(int[] own, int[] later) {
        if (blocks == end.length) {
            end = Arrays.copyOf(end, 2 * blocks);
            parent = Arrays.copyOf(parent, 2 * blocks);
            beyond = Arrays.copyOf(beyond, 2 * blocks);
        }
        for (int vertex : own) {
            placed[vertex] = true;
            order[ordered++] = vertex;
        }
        end[blocks] = ordered;
        parent[blocks] = NONE;
        beyond[blocks] = later;
        return blocks++;
    }

    /** All vertices, each once, block after block. */
    public int[] order() {
        return order;
    }

    int blocks() {
        return blocks;
    }

    int start(int block) {
        return block == 0 ? 0 : end[block - 1];
    }

    int end(int block) {
        return end[block];
    }

    /** The block that comes next above, or -1. */
    int parent(int block) {
        return parent[block];
    }

    /** The later vertices that a block meets, in no order. */
    int[] beyond(int block) {
        return beyond[block];
    }
}
