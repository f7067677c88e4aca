package pitchboard.strength.elements.mesh;

import java.util.Arrays;

/** Moves inner points toward the middle of their neighbours, unless a triangle around them would become worse. */
final class Smoothing {
    private static final int ROUNDS = 5;

    private final double[] x;
    private final double[] y;
    private final int[] triangles;
    private final int firstInner;
    /** The triangles around each point: {@code around[start[p]]} up to {@code around[start[p + 1]]}. */
    private final int[] start;

    private final int[] around;

    /** @param firstInner the points before it stay where they are */
    Smoothing(double[] x, double[] y, int[] triangles, int firstInner) {
        this.x = x;
        this.y = y;
        this.triangles = triangles;
        this.firstInner = firstInner;
        this.start = new int[x.length + 1];
        for (int point : triangles) {
            start[point + 1]++;
        }
        for (int point = 0; point < x.length; point++) {
            start[point + 1] += start[point];
        }
        int[] filled = Arrays.copyOf(start, x.length);
        this.around = new int[triangles.length];
        for (int k = 0; k < triangles.length; k++) {
            around[filled[triangles[k]]++] = k / 3;
        }
    }

    void run() {
        for (int round = 0; round < ROUNDS; round++) {
            for (int point = firstInner; point < x.length; point++) {
                move(point);
            }
        }
    }

    private void move(int point) {
        double sumX = 0;
        double sumY = 0;
        int count = 0;
        for (int k = start[point]; k < start[point + 1]; k++) {
            for (int i = 0; i < 3; i++) {
                int other = triangles[3 * around[k] + i];
                if (other != point) {
                    sumX += x[other];
                    sumY += y[other];
                    count++;
                }
            }
        }
        double oldX = x[point];
        double oldY = y[point];
        double before = worstAround(point);
        x[point] = sumX / count;
        y[point] = sumY / count;
        if (worstAround(point) < before) {
            x[point] = oldX;
            y[point] = oldY;
        }
    }

    private double worstAround(int point) {
        double worst = 1;
        for (int k = start[point]; k < start[point + 1]; k++) {
            worst = Math.min(worst, quality(around[k]));
        }
        return worst;
    }

    /** 1 for even sides, 0 for a flat triangle, below 0 for one turned over. */
    private double quality(int triangle) {
        int a = triangles[3 * triangle];
        int b = triangles[3 * triangle + 1];
        int c = triangles[3 * triangle + 2];
        double ux = x[b] - x[a];
        double uy = y[b] - y[a];
        double vx = x[c] - x[a];
        double vy = y[c] - y[a];
        double wx = x[c] - x[b];
        double wy = y[c] - y[b];
        double squares = ux * ux + uy * uy + vx * vx + vy * vy + wx * wx + wy * wy;
        return 2 * Math.sqrt(3) * (ux * vy - uy * vx) / squares;
    }
}
