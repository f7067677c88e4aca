package pitchboard.strength.elements.mesh;

import java.util.Arrays;

/** The sides of all triangles as they are now, to be found by their ends. */
final class Sides {
    private final Delaunay net;
    /** For each point a side that starts there, and for each side the next one that starts at the same point. */
    private final int[] head;

    private final int[] next;

    Sides(Delaunay net) {
        this.net = net;
        this.head = new int[net.points];
        Arrays.fill(head, Delaunay.NOWHERE);
        this.next = new int[3 * net.triangles];
        for (int side = 0; side < next.length; side++) {
            next[side] = head[net.corner[side]];
            head[net.corner[side]] = side;
        }
    }

    /** The side that runs from one point to another, or {@link Delaunay#NOWHERE}, also for points that came later. */
    int find(int from, int to) {
        if (from >= head.length) {
            return Delaunay.NOWHERE;
        }
        int side = head[from];
        while (side != Delaunay.NOWHERE && net.corner[Delaunay.next(side)] != to) {
            side = next[side];
        }
        return side;
    }
}
