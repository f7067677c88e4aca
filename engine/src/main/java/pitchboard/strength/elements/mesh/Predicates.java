package pitchboard.strength.elements.mesh;

import java.math.BigDecimal;

/**
 * On which side a place lies: never wrong, because what a double cannot decide is decided exactly.
 *
 * <p>The error bounds are those of J. R. Shewchuk, Adaptive precision floating-point arithmetic and fast robust geometric
 * predicates, Discrete Comput. Geom. 18 (1997) 305 (from memory, taken wider here).
 */
final class Predicates {
    private static final double TURN_BOUND = 1e-15;
    private static final double CIRCLE_BOUND = 4e-15;

    private Predicates() {}

    /** 1 when c lies left of the way from a to b, -1 when right, 0 on the line. */
    static int turn(Xy a, Xy b, Xy c) {
        return turn(a.x(), a.y(), b.x(), b.y(), c.x(), c.y());
    }

    static int turn(double ax, double ay, double bx, double by, double cx, double cy) {
        double left = (ax - cx) * (by - cy);
        double right = (ay - cy) * (bx - cx);
        double difference = left - right;
        if (Math.abs(difference) > TURN_BOUND * (Math.abs(left) + Math.abs(right))) {
            return difference > 0 ? 1 : -1;
        }
        BigDecimal exactLeft = less(ax, cx).multiply(less(by, cy));
        return exactLeft.compareTo(less(ay, cy).multiply(less(bx, cx)));
    }

    /** 1 when d lies inside the circle through a, b and c, which run counterclockwise; -1 outside, 0 on it. */
    static int inCircle(double[] x, double[] y, int a, int b, int c, int d) {
        double ax = x[a] - x[d];
        double ay = y[a] - y[d];
        double bx = x[b] - x[d];
        double by = y[b] - y[d];
        double cx = x[c] - x[d];
        double cy = y[c] - y[d];
        double la = ax * ax + ay * ay;
        double lb = bx * bx + by * by;
        double lc = cx * cx + cy * cy;
        double sum = la * (bx * cy - cx * by) + lb * (cx * ay - ax * cy) + lc * (ax * by - bx * ay);
        double size = la * (Math.abs(bx * cy) + Math.abs(cx * by))
                + lb * (Math.abs(cx * ay) + Math.abs(ax * cy))
                + lc * (Math.abs(ax * by) + Math.abs(bx * ay));
        if (Math.abs(sum) > CIRCLE_BOUND * size) {
            return sum > 0 ? 1 : -1;
        }
        return exactInCircle(x, y, a, b, c, d);
    }

    private static int exactInCircle(double[] x, double[] y, int a, int b, int c, int d) {
        BigDecimal[] xs = {less(x[a], x[d]), less(x[b], x[d]), less(x[c], x[d])};
        BigDecimal[] ys = {less(y[a], y[d]), less(y[b], y[d]), less(y[c], y[d])};
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            BigDecimal lift = xs[i].multiply(xs[i]).add(ys[i].multiply(ys[i]));
            sum = sum.add(lift.multiply(xs[j].multiply(ys[k]).subtract(xs[k].multiply(ys[j]))));
        }
        return sum.signum();
    }

    private static BigDecimal less(double value, double other) {
        return new BigDecimal(value).subtract(new BigDecimal(other));
    }
}
