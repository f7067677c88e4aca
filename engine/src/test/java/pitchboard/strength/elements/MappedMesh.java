package pitchboard.strength.elements;

import java.util.function.BiFunction;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Xy;

/** Meshes of published benchmarks: a square of columns by rows bent to a shape, each cell two triangles. */
final class MappedMesh {
    private final int columns;
    private final int rows;
    private final BiFunction<Double, Double, Xy> bend;

    /** @param bend where a place of the unit square comes to lie; must not turn it over */
    MappedMesh(int columns, int rows, BiFunction<Double, Double, Xy> bend) {
        this.columns = columns;
        this.rows = rows;
        this.bend = bend;
    }

    /** The node at a place of the square, counted in half cells from the lower left corner. */
    int node(int halfColumn, int halfRow) {
        return halfColumn * (2 * rows + 1) + halfRow;
    }

    Mesh mesh() {
        int nodes = (2 * columns + 1) * (2 * rows + 1);
        double[] x = new double[nodes];
        double[] y = new double[nodes];
        for (int i = 0; i <= 2 * columns; i++) {
            for (int j = 0; j <= 2 * rows; j++) {
                Xy place = bend.apply(i / (2.0 * columns), j / (2.0 * rows));
                x[node(i, j)] = place.x();
                y[node(i, j)] = place.y();
            }
        }
        int[] elements = new int[columns * rows * 2 * Mesh.NODES_OF_ELEMENT];
        int count = 0;
        int[][] lower = {{0, 0}, {2, 0}, {2, 2}, {1, 0}, {2, 1}, {1, 1}};
        int[][] upper = {{0, 0}, {2, 2}, {0, 2}, {1, 1}, {1, 2}, {0, 1}};
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                for (int[][] triangle : new int[][][] {lower, upper}) {
                    for (int[] at : triangle) {
                        elements[count++] = node(2 * i + at[0], 2 * j + at[1]);
                    }
                }
            }
        }
        return new Mesh(x, y, elements);
    }

    /** Forces of a traction on the right side of the square, from its lower to its upper end, thickness included. */
    double[] tractionOnRight(Mesh mesh, Traction traction) {
        double[] forces = new double[2 * mesh.nodes()];
        double[][] gauss = {{0.5 - Math.sqrt(0.15), 5.0 / 18}, {0.5, 8.0 / 18}, {0.5 + Math.sqrt(0.15), 5.0 / 18}};
        for (int j = 0; j < rows; j++) {
            int[] side = {node(2 * columns, 2 * j), node(2 * columns, 2 * j + 2), node(2 * columns, 2 * j + 1)};
            for (double[] point : gauss) {
                addPoint(mesh, side, point[0], point[1], traction, forces);
            }
        }
        return forces;
    }

    private static void addPoint(Mesh mesh, int[] side, double s, double weight, Traction traction, double[] forces) {
        double[] shape = {(1 - s) * (1 - 2 * s), s * (2 * s - 1), 4 * s * (1 - s)};
        double[] slope = {4 * s - 3, 4 * s - 1, 4 - 8 * s};
        double x = 0;
        double y = 0;
        double dx = 0;
        double dy = 0;
        for (int i = 0; i < 3; i++) {
            x += shape[i] * mesh.x()[side[i]];
            y += shape[i] * mesh.y()[side[i]];
            dx += slope[i] * mesh.x()[side[i]];
            dy += slope[i] * mesh.y()[side[i]];
        }
        Xy force = traction.of(new Xy(x, y), new Xy(dx, dy));
        for (int i = 0; i < 3; i++) {
            forces[2 * side[i]] += weight * shape[i] * force.x();
            forces[2 * side[i] + 1] += weight * shape[i] * force.y();
        }
    }

    /** Force per unit of the parameter along a side, from the place and the derivative of the place. */
    interface Traction {
        Xy of(Xy place, Xy tangent);
    }
}
