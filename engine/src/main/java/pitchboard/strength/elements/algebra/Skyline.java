package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * A symmetric matrix kept as the lower half of each row, from its first number to the diagonal, and its Cholesky factor,
 * which needs no more room than that.
 *
 * <p>Use once, in this order: {@link #Skyline the outline}, {@link #add}, {@link #factor}, then {@link #solve} as often as
 * wanted. A. Jennings, A compact storage scheme for the solution of symmetric linear simultaneous equations, Computer
 * Journal 9 (1966) 281 (from memory).
 */
public final class Skyline {
    /** Below this share of its diagonal before factoring, a pivot counts as nothing: the structure can move. */
    private static final double LEAST_PIVOT = 1e-11;

    /** Half a gigabyte. */
    private static final int MOST_KEPT = 1 << 26;

    private final int[] first;
    /** Where column 0 of each row would stand: number (i, j) is at {@code base[i] + j}. */
    private final int[] base;

    private final double[] values;

    /**
     * An empty matrix.
     *
     * @param first for each row the first column that may hold a number, at most the row itself
     * @throws TooLarge when it would not fit into memory
     */
    public Skyline(int[] first) {
        this.first = first.clone();
        this.base = new int[first.length];
        long room = 0;
        for (int row = 0; row < first.length; row++) {
            base[row] = (int) room - first[row];
            room += row - first[row] + 1;
            if (room > MOST_KEPT) {
                throw new TooLarge("so many unknowns that meet need more than " + MOST_KEPT + " numbers");
            }
        }
        this.values = new double[(int) room];
    }

    public int size() {
        return first.length;
    }

    /** How many numbers are kept. */
    public int kept() {
        return values.length;
    }

    /**
     * Adds to a number of the lower half; the upper half follows by symmetry.
     *
     * @param column at most the row, and not before the row's first
     */
    public void add(int row, int column, double value) {
        values[base[row] + column] += value;
    }

    /**
     * Replaces the matrix by its factor. Two rows are worked on at once, which halves what must be fetched from memory.
     *
     * @return the first row whose pivot vanishes, or -1 when all is well
     */
    public int factor() {
        double[] diagonal = new double[size()];
        for (int row = 0; row < size(); row++) {
            diagonal[row] = values[base[row] + row];
        }
        for (int row = 0; row < size(); row += 2) {
            int last = Math.min(row + 1, size() - 1);
            reduceRows(row, last);
            if (!finishRow(row, diagonal[row])) {
                return row;
            }
            reduceAlone(last, row, last);
            if (last > row && !finishRow(last, diagonal[last])) {
                return last;
            }
        }
        return -1;
    }

    /** Columns before the pair, for both rows of it. */
    private void reduceRows(int row, int last) {
        if (last == row) {
            reduceAlone(row, first[row], row);
            return;
        }
        int shared = Math.min(row, Math.max(first[row], first[last]));
        reduceAlone(row, first[row], shared);
        reduceAlone(last, first[last], shared);
        int column = shared;
        for (; column + 1 < row; column += 2) {
            reduceFour(row, last, column);
        }
        reduceAlone(row, column, row);
        reduceAlone(last, column, row);
    }

    /** Two rows by two columns: four numbers at once. */
    private void reduceFour(int a, int b, int column) {
        int c = column;
        int d = column + 1;
        int start = Math.max(Math.max(first[a], first[b]), Math.max(first[c], first[d]));
        double[] v = values;
        double ac = v[base[a] + c] - dot(a, c, Math.max(first[a], first[c]), Math.min(start, c));
        double bc = v[base[b] + c] - dot(b, c, Math.max(first[b], first[c]), Math.min(start, c));
        double ad = v[base[a] + d] - dot(a, d, Math.max(first[a], first[d]), Math.min(start, c));
        double bd = v[base[b] + d] - dot(b, d, Math.max(first[b], first[d]), Math.min(start, c));
        int ia = base[a];
        int ib = base[b];
        int ic = base[c];
        int id = base[d];
        for (int k = start; k < c; k++) {
            double va = v[ia + k];
            double vb = v[ib + k];
            double vc = v[ic + k];
            double vd = v[id + k];
            ac -= va * vc;
            bc -= vb * vc;
            ad -= va * vd;
            bd -= vb * vd;
        }
        ac /= v[ic + c];
        bc /= v[ic + c];
        double dc = first[d] <= c ? v[id + c] : 0;
        v[ia + c] = ac;
        v[ib + c] = bc;
        v[ia + d] = (ad - ac * dc) / v[id + d];
        v[ib + d] = (bd - bc * dc) / v[id + d];
    }

    private void reduceAlone(int row, int from, int to) {
        for (int column = Math.max(from, first[row]); column < to; column++) {
            int start = Math.max(first[row], first[column]);
            double rest = values[base[row] + column] - dot(row, column, start, column);
            values[base[row] + column] = rest / values[base[column] + column];
        }
    }

    private double dot(int row, int other, int from, int to) {
        double sum = 0;
        int a = base[row];
        int b = base[other];
        for (int k = from; k < to; k++) {
            sum += values[a + k] * values[b + k];
        }
        return sum;
    }

    private boolean finishRow(int row, double before) {
        double pivot = values[base[row] + row] - dot(row, row, first[row], row);
        if (!(pivot > LEAST_PIVOT * before)) {
            return false;
        }
        values[base[row] + row] = Math.sqrt(pivot);
        return true;
    }

    /** The unknowns for one right-hand side. The matrix must have been factored. */
    public double[] solve(double[] right) {
        double[] x = Arrays.copyOf(right, size());
        for (int row = 0; row < size(); row++) {
            double rest = x[row];
            for (int k = first[row]; k < row; k++) {
                rest -= values[base[row] + k] * x[k];
            }
            x[row] = rest / values[base[row] + row];
        }
        for (int row = size() - 1; row >= 0; row--) {
            x[row] /= values[base[row] + row];
            double known = x[row];
            for (int k = first[row]; k < row; k++) {
                x[k] -= values[base[row] + k] * known;
            }
        }
        return x;
    }
}
