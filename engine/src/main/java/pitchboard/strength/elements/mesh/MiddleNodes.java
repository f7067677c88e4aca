package pitchboard.strength.elements.mesh;

import java.util.Arrays;

/** Puts a node on the middle of every side, the same one for the two triangles that share the side. */
final class MiddleNodes {
    private final double[] x;
    private final double[] y;
    private final int[] triangles;
    private final int[] elements;
    /** For each corner the sides known to lead from it to a higher corner: a chain through {@code next}. */
    private final int[] head;

    private final int[] next;
    private final int[] farEnd;
    private int sides;

    MiddleNodes(double[] cornerX, double[] cornerY, int[] triangles) {
        this.triangles = triangles;
        this.x = Arrays.copyOf(cornerX, cornerX.length + triangles.length);
        this.y = Arrays.copyOf(cornerY, cornerY.length + triangles.length);
        this.elements = new int[2 * triangles.length];
        this.head = new int[cornerX.length];
        Arrays.fill(head, -1);
        this.next = new int[triangles.length];
        this.farEnd = new int[triangles.length];
    }

    Mesh mesh() {
        for (int k = 0; k < triangles.length; k += 3) {
            for (int i = 0; i < 3; i++) {
                int from = triangles[k + i];
                int to = triangles[k + (i + 1) % 3];
                elements[2 * k + i] = from;
                elements[2 * k + 3 + i] = head.length + side(Math.min(from, to), Math.max(from, to));
            }
        }
        int nodes = head.length + sides;
        return new Mesh(Arrays.copyOf(x, nodes), Arrays.copyOf(y, nodes), elements);
    }

    private int side(int low, int high) {
        for (int side = head[low]; side >= 0; side = next[side]) {
            if (farEnd[side] == high) {
                return side;
            }
        }
        next[sides] = head[low];
        farEnd[sides] = high;
        head[low] = sides;
        x[head.length + sides] = (x[low] + x[high]) / 2;
        y[head.length + sides] = (y[low] + y[high]) / 2;
        return sides++;
    }
}
