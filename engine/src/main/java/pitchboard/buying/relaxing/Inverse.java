package pitchboard.buying.relaxing;

import java.util.Arrays;

/** The inverse of a basis matrix, dense, kept in step with exchanges of single columns. Approximate, like all doubles. */
final class Inverse {
    private static final double TINY = 1e-11;

    private final double[][] rows;

    Inverse(int size) {
        rows = new double[size][size];
        reset();
    }

    /** The inverse of the matrix with -1 on its diagonal: every row's own slack is basic. */
    void reset() {
        for (int row = 0; row < rows.length; row++) {
            Arrays.fill(rows[row], 0);
            rows[row][row] = -1;
        }
    }

    double[] row(int row) {
        return rows[row];
    }

    /** {@code into = inverse * right}. */
    void times(double[] right, double[] into) {
        for (int row = 0; row < rows.length; row++) {
            double[] line = rows[row];
            double sum = 0;
            for (int column = 0; column < line.length; column++) {
                sum += line[column] * right[column];
            }
            into[row] = sum;
        }
    }

    /** The basis changes: its column {@code pivot} gives way to one that the inverse turns into {@code turned}. */
    void exchange(int pivot, double[] turned) {
        double[] line = rows[pivot];
        double by = 1 / turned[pivot];
        for (int column = 0; column < line.length; column++) {
            line[column] *= by;
        }
        for (int row = 0; row < rows.length; row++) {
            double factor = turned[row];
            if (row != pivot && factor != 0) {
                double[] other = rows[row];
                for (int column = 0; column < line.length; column++) {
                    other[column] -= factor * line[column];
                }
            }
        }
    }

    /**
     * Works the inverse out anew.
     *
     * @param matrix the basis, row by row; destroyed
     * @return whether it has an inverse
     */
    boolean invert(double[][] matrix) {
        int size = rows.length;
        for (int row = 0; row < size; row++) {
            Arrays.fill(rows[row], 0);
            rows[row][row] = 1;
        }
        for (int column = 0; column < size; column++) {
            int pivot = column;
            for (int row = column + 1; row < size; row++) {
                if (Math.abs(matrix[row][column]) > Math.abs(matrix[pivot][column])) {
                    pivot = row;
                }
            }
            if (Math.abs(matrix[pivot][column]) < TINY) {
                return false;
            }
            swap(matrix, pivot, column);
            swap(rows, pivot, column);
            eliminate(matrix, column);
        }
        return true;
    }

    private void eliminate(double[][] matrix, int column) {
        scale(rows[column], 1 / matrix[column][column]);
        scale(matrix[column], 1 / matrix[column][column]);
        for (int row = 0; row < rows.length; row++) {
            double factor = matrix[row][column];
            if (row != column && factor != 0) {
                subtract(matrix[row], matrix[column], factor);
                subtract(rows[row], rows[column], factor);
            }
        }
    }

    private static void scale(double[] line, double by) {
        for (int column = 0; column < line.length; column++) {
            line[column] *= by;
        }
    }

    private static void subtract(double[] from, double[] line, double factor) {
        for (int column = 0; column < line.length; column++) {
            from[column] -= factor * line[column];
        }
    }

    private static void swap(double[][] lines, int a, int b) {
        double[] kept = lines[a];
        lines[a] = lines[b];
        lines[b] = kept;
    }
}
