package pitchboard.strength.elements.mesh;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** The triangles cleared for a new point, and the rim around them. */
final class Hole {
    private final Delaunay net;

    int[] triangle = new int[32];
    int cleared;
    int[] rimFrom = new int[32];
    int[] rimTo = new int[32];
    int[] rimBeyond = new int[32];
    boolean[] rimFixed = new boolean[32];
    private int[] rimSide = new int[32];
    int rim;
    int[] rimStarts = new int[64];
    private int[] seen = new int[64];
    private int round;

    Hole(Delaunay net) {
        this.net = net;
    }

    void dig(int point, int start) {
        round++;
        cleared = 0;
        rim = 0;
        clear(start);
        for (int i = 0; i < cleared; i++) {
            for (int k = 0; k < 3; k++) {
                lookBeyond(point, 3 * triangle[i] + k);
            }
        }
    }

    private void lookBeyond(int point, int side) {
        int other = net.beyond[side];
        if (other == Delaunay.NOWHERE || net.fixed[side] || !holds(other, point)) {
            addRim(side);
        } else if (!isCleared(other)) {
            clear(other);
        }
    }

    private boolean holds(int other, int point) {
        int side = 3 * other;
        return isCleared(other)
                || Predicates.inCircle(
                                net.x, net.y, net.corner[side], net.corner[side + 1], net.corner[side + 2], point)
                        > 0;
    }

    private boolean isCleared(int other) {
        return other < seen.length && seen[other] == round;
    }

    private void clear(int other) {
        if (other >= seen.length) {
            seen = Arrays.copyOf(seen, 2 * other);
        }
        if (cleared == triangle.length) {
            triangle = Arrays.copyOf(triangle, 2 * cleared);
        }
        seen[other] = round;
        triangle[cleared++] = other;
    }

    private void addRim(int side) {
        if (rim == rimFrom.length) {
            rimFrom = Arrays.copyOf(rimFrom, 2 * rim);
            rimTo = Arrays.copyOf(rimTo, 2 * rim);
            rimBeyond = Arrays.copyOf(rimBeyond, 2 * rim);
            rimFixed = Arrays.copyOf(rimFixed, 2 * rim);
            rimSide = Arrays.copyOf(rimSide, 2 * rim);
        }
        rimFrom[rim] = net.corner[side];
        rimTo[rim] = net.corner[Delaunay.next(side)];
        rimBeyond[rim] = net.beyond[side];
        rimFixed[rim] = net.fixed[side];
        rimSide[rim++] = side;
    }

    boolean anySide(IntPredicate wanted) {
        for (int i = 0; i < rim; i++) {
            if (wanted.test(rimSide[i])) {
                return true;
            }
        }
        return false;
    }

    int[] remember(int start, int newTriangle) {
        if (start >= rimStarts.length) {
            rimStarts = Arrays.copyOf(rimStarts, Math.max(2 * start, 64));
        }
        rimStarts[start] = newTriangle;
        return rimStarts;
    }
}
