package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * Which vertices meet: two vertices are neighbours when one group holds both. The neighbours of vertex {@code v} are
 * {@code neighbours[start[v]]} up to, not including, {@code neighbours[start[v + 1]]}, each once, in rising order.
 */
final class Graph {
    final int[] start;
    final int[] neighbours;

    private Graph(int[] start, int[] neighbours) {
        this.start = start;
        this.neighbours = neighbours;
    }

    /**
     * @param vertices how many there are, counted from 0
     * @param groups vertices that all meet each other; a vertex may stand in a group more than once
     */
    static Graph of(int vertices, int[][] groups) {
        int[] room = new int[vertices + 1];
        for (int[] group : groups) {
            for (int vertex : group) {
                room[vertex + 1] += group.length - 1;
            }
        }
        for (int vertex = 0; vertex < vertices; vertex++) {
            room[vertex + 1] += room[vertex];
        }
        int[] filled = new int[vertices];
        int[] all = new int[room[vertices]];
        for (int[] group : groups) {
            pairUp(group, room, filled, all);
        }
        return withoutRepeats(room, filled, all);
    }

    private static void pairUp(int[] group, int[] room, int[] filled, int[] all) {
        for (int i = 0; i < group.length; i++) {
            for (int j = 0; j < group.length; j++) {
                if (i != j) {
                    int vertex = group[i];
                    all[room[vertex] + filled[vertex]++] = group[j];
                }
            }
        }
    }

    private static Graph withoutRepeats(int[] room, int[] filled, int[] all) {
        int vertices = filled.length;
        int[] start = new int[vertices + 1];
        int kept = 0;
        for (int vertex = 0; vertex < vertices; vertex++) {
            int from = room[vertex];
            int to = from + filled[vertex];
            Arrays.sort(all, from, to);
            start[vertex] = kept;
            for (int k = from; k < to; k++) {
                boolean repeated = k > from && all[k] == all[k - 1];
                if (!repeated && all[k] != vertex) {
                    all[kept++] = all[k];
                }
            }
        }
        start[vertices] = kept;
        return new Graph(start, Arrays.copyOf(all, kept));
    }

    int vertices() {
        return start.length - 1;
    }

    int degree(int vertex) {
        return start[vertex + 1] - start[vertex];
    }
}
