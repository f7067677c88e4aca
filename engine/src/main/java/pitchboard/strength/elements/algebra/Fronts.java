package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * The unknowns of each block of a {@link Dissection}, and the later ones that it meets: its front. Unknowns are numbered as
 * they are worked off.
 */
final class Fronts {
    /** Half a gigabyte. */
    private static final long MOST_KEPT = 1L << 26;

    /** The first unknown of each block; one more at the end. */
    final int[] first;
    /** The later unknowns of each block, rising. */
    final int[][] beyond;

    final int[] parent;
    /** Where each block's columns begin; one more at the end. A column holds the block's own unknowns, then the later. */
    final int[] at;

    final int[] blockOf;
    final int[] firstOfVertex;
    /** Room for what the blocks hand up, so long as it waits. */
    final int waiting;

    final int largest;

    /**
     * Lays the fronts out.
     *
     * @param unknowns how many each vertex has
     * @throws TooLarge when the numbers would not fit into memory
     */
    Fronts(Dissection cut, int[] unknowns) {
        int blocks = cut.blocks();
        this.first = new int[blocks + 1];
        this.beyond = new int[blocks][];
        this.parent = new int[blocks];
        this.at = new int[blocks + 1];
        this.firstOfVertex = numbered(cut, unknowns);
        this.blockOf = new int[first[blocks]];
        long room = 0;
        int most = 0;
        for (int block = 0; block < blocks; block++) {
            parent[block] = cut.parent(block);
            Arrays.fill(blockOf, first[block], first[block + 1], block);
            beyond[block] = spread(cut.beyond(block), unknowns);
            most = Math.max(most, rows(block));
            room += (long) rows(block) * own(block);
            if (room > MOST_KEPT) {
                throw new TooLarge("so many unknowns that meet need more than " + MOST_KEPT + " numbers");
            }
            at[block + 1] = (int) room;
        }
        this.largest = most;
        this.waiting = mostWaiting();
    }

    private int[] numbered(Dissection cut, int[] unknowns) {
        int[] start = new int[unknowns.length];
        int count = 0;
        for (int block = 0; block < cut.blocks(); block++) {
            for (int i = cut.start(block); i < cut.end(block); i++) {
                int vertex = cut.order()[i];
                start[vertex] = count;
                count += unknowns[vertex];
            }
            first[block + 1] = count;
        }
        return start;
    }

    private int[] spread(int[] vertices, int[] unknowns) {
        int count = 0;
        for (int vertex : vertices) {
            count += unknowns[vertex];
        }
        int[] all = new int[count];
        int filled = 0;
        for (int vertex : vertices) {
            for (int i = 0; i < unknowns[vertex]; i++) {
                all[filled++] = firstOfVertex[vertex] + i;
            }
        }
        Arrays.sort(all);
        return all;
    }

    private int mostWaiting() {
        long most = 0;
        long now = 0;
        long[] below = new long[parent.length];
        for (int block = 0; block < parent.length; block++) {
            now += handed(block) - below[block];
            most = Math.max(most, now);
            if (parent[block] >= 0) {
                below[parent[block]] += handed(block);
            }
        }
        if (most > MOST_KEPT) {
            throw new TooLarge("so many unknowns that meet need more than " + MOST_KEPT + " numbers");
        }
        return (int) most;
    }

    int blocks() {
        return parent.length;
    }

    int own(int block) {
        return first[block + 1] - first[block];
    }

    int rows(int block) {
        return own(block) + beyond[block].length;
    }

    /** How many numbers a block hands up. */
    int handed(int block) {
        return beyond[block].length * beyond[block].length;
    }

    /** In which row of a block's columns an unknown stands that is its own or that it meets. */
    int rowOf(int block, int unknown) {
        return unknown < first[block + 1]
                ? unknown - first[block]
                : own(block) + Arrays.binarySearch(beyond[block], unknown);
    }
}
