package pitchboard.strength.elements;

import java.util.Arrays;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Xy;

/** Stress along the grain at places in rows along the grain, the lowest first, and columns across it. */
public final class StressGrid {
    private final Grain grain;
    private final double apart;
    private final double startAlong;
    private final double startAcross;
    private final int rows;
    private final int columns;
    /** Row after row; not a number outside the wood. */
    private final double[] along;

    private StressGrid(StressPicture picture, Grain grain, double apart) {
        this.grain = grain;
        this.apart = apart;
        Mesh mesh = picture.mesh();
        double[] ends = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int node = 0; node < mesh.nodes(); node++) {
            double a = grain.along(mesh.x()[node], mesh.y()[node]);
            double b = grain.across(mesh.x()[node], mesh.y()[node]);
            ends[0] = Math.min(ends[0], a);
            ends[1] = Math.min(ends[1], b);
            ends[2] = Math.max(ends[2], a);
            ends[3] = Math.max(ends[3], b);
        }
        // Half a step in, so that no row lies on an edge.
        this.startAlong = ends[0] + apart / 2;
        this.startAcross = ends[1] + apart / 2;
        this.columns = 1 + (int) ((ends[2] - startAlong) / apart);
        this.rows = 1 + (int) ((ends[3] - startAcross) / apart);
        this.along = new double[rows * columns];
        Arrays.fill(along, Double.NaN);
    }

    static StressGrid of(StressPicture picture, Grain grain, double apart) {
        StressGrid grid = new StressGrid(picture, grain, apart);
        for (int triangle = 0; triangle < picture.mesh().triangles(); triangle++) {
            grid.take(picture, triangle);
        }
        return grid;
    }

    private void take(StressPicture picture, int triangle) {
        Mesh mesh = picture.mesh();
        double[] a = new double[3];
        double[] b = new double[3];
        double[] stress = new double[Element.NODES];
        for (int i = 0; i < Element.NODES; i++) {
            int node = mesh.node(triangle, i);
            stress[i] = picture.along(node);
            if (i < 3) {
                a[i] = (grain.along(mesh.x()[node], mesh.y()[node]) - startAlong) / apart;
                b[i] = (grain.across(mesh.x()[node], mesh.y()[node]) - startAcross) / apart;
            }
        }
        double twice = (a[1] - a[0]) * (b[2] - b[0]) - (a[2] - a[0]) * (b[1] - b[0]);
        int lastRow = Math.min(rows - 1, (int) Math.floor(Math.max(b[0], Math.max(b[1], b[2]))));
        int lastColumn = Math.min(columns - 1, (int) Math.floor(Math.max(a[0], Math.max(a[1], a[2]))));
        int firstColumn = Math.max(0, (int) Math.ceil(Math.min(a[0], Math.min(a[1], a[2]))));
        int firstRow = Math.max(0, (int) Math.ceil(Math.min(b[0], Math.min(b[1], b[2]))));
        for (int row = firstRow; row <= lastRow; row++) {
            for (int column = firstColumn; column <= lastColumn; column++) {
                double s = ((column - a[0]) * (b[2] - b[0]) - (a[2] - a[0]) * (row - b[0])) / twice;
                double t = ((a[1] - a[0]) * (row - b[0]) - (column - a[0]) * (b[1] - b[0])) / twice;
                if (s >= -1e-9 && t >= -1e-9 && s + t <= 1 + 1e-9) {
                    along[row * columns + column] = between(stress, s, t);
                }
            }
        }
    }

    /** By the shape functions of the triangle. */
    private static double between(double[] of, double s, double t) {
        double r = 1 - s - t;
        return of[0] * r * (2 * r - 1)
                + of[1] * s * (2 * s - 1)
                + of[2] * t * (2 * t - 1)
                + 4 * (of[3] * r * s + of[4] * s * t + of[5] * t * r);
    }

    public int rows() {
        return rows;
    }

    public int columns() {
        return columns;
    }

    /** In N/mm², below zero for compression; not a number where there is no wood. */
    public double along(int row, int column) {
        return along[row * columns + column];
    }

    /** The column nearest to a place. */
    public int columnAt(Xy place) {
        double column = (grain.along(place.x(), place.y()) - startAlong) / apart;
        return Math.min(columns - 1, Math.max(0, (int) Math.floor(column + 0.5)));
    }

    /** Where a place lies; between places when they are not whole. */
    public Xy at(double row, double column) {
        double a = startAlong + column * apart;
        double b = startAcross + row * apart;
        return new Xy(grain.cos() * a - grain.sin() * b, grain.sin() * a + grain.cos() * b);
    }
}
