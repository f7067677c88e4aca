package pitchboard.strength.elements;

import java.util.Arrays;
import pitchboard.strength.elements.mesh.Mesh;

/**
 * The six-node triangle: shape functions, strains and stiffness. Shares of the corners are its coordinates; sides may be
 * curved.
 *
 * <p>O. C. Zienkiewicz and R. L. Taylor, The Finite Element Method, 4th ed., chapters 7 and 8 (from memory).
 */
final class Element {
    static final int NODES = Mesh.NODES_OF_ELEMENT;

    /** The three points inside that integrate squares exactly, as shares of the second and third corner. */
    static final double[][] POINTS = {{1.0 / 6, 1.0 / 6}, {2.0 / 3, 1.0 / 6}, {1.0 / 6, 2.0 / 3}};

    private static final double WEIGHT = 1.0 / 6;

    /** Derivatives of the shape functions by x and y at the place last asked for. */
    final double[] dx = new double[NODES];

    final double[] dy = new double[NODES];
    private final double[] ds = new double[NODES];
    private final double[] dt = new double[NODES];
    private final Mesh mesh;

    Element(Mesh mesh) {
        this.mesh = mesh;
    }

    /**
     * Sets {@link #dx} and {@link #dy} at the place (s, t) of a triangle.
     *
     * @return twice the area around the place: the determinant of the map from shares to mm
     */
    double derive(int triangle, double s, double t) {
        double r = 1 - s - t;
        set(ds, 1 - 4 * r, 4 * s - 1, 0, 4 * (r - s), 4 * t, -4 * t);
        set(dt, 1 - 4 * r, 0, 4 * t - 1, -4 * s, 4 * s, 4 * (r - t));
        double xs = 0;
        double xt = 0;
        double ys = 0;
        double yt = 0;
        for (int i = 0; i < NODES; i++) {
            int node = mesh.node(triangle, i);
            xs += ds[i] * mesh.x()[node];
            xt += dt[i] * mesh.x()[node];
            ys += ds[i] * mesh.y()[node];
            yt += dt[i] * mesh.y()[node];
        }
        double determinant = xs * yt - xt * ys;
        for (int i = 0; i < NODES; i++) {
            dx[i] = (yt * ds[i] - ys * dt[i]) / determinant;
            dy[i] = (xs * dt[i] - xt * ds[i]) / determinant;
        }
        return determinant;
    }

    private static void set(double[] to, double a, double b, double c, double ab, double bc, double ca) {
        to[0] = a;
        to[1] = b;
        to[2] = c;
        to[3] = ab;
        to[4] = bc;
        to[5] = ca;
    }

    /**
     * The stiffness of one triangle, in N/mm: twelve rows of twelve, x and y of node after node.
     *
     * @param d the material as {@link Orthotropic#turned} gives it
     */
    void stiffness(int triangle, double[] d, double thicknessMm, double[] k) {
        Arrays.fill(k, 0);
        for (double[] point : POINTS) {
            double weight = WEIGHT * thicknessMm * derive(triangle, point[0], point[1]);
            addPoint(d, weight, k);
        }
    }

    private void addPoint(double[] d, double weight, double[] k) {
        for (int j = 0; j < NODES; j++) {
            double xj = weight * dx[j];
            double yj = weight * dy[j];
            double sxx = d[0] * xj + d[2] * yj;
            double syx = d[1] * xj + d[4] * yj;
            double txx = d[2] * xj + d[5] * yj;
            double sxy = d[1] * yj + d[2] * xj;
            double syy = d[3] * yj + d[4] * xj;
            double txy = d[4] * yj + d[5] * xj;
            for (int i = 0; i < NODES; i++) {
                int at = 24 * i + 2 * j;
                k[at] += dx[i] * sxx + dy[i] * txx;
                k[at + 1] += dx[i] * sxy + dy[i] * txy;
                k[at + 12] += dy[i] * syx + dx[i] * txx;
                k[at + 13] += dy[i] * syy + dx[i] * txy;
            }
        }
    }
}
