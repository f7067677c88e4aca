package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * A symmetric, positive definite matrix with few numbers, and its Cholesky factor, block after block: what a block leaves
 * of the later unknowns it hands up to its parent.
 *
 * <p>Use once, in this order: {@link #SparseMatrix the outline}, {@link #add}, {@link #factor}, then {@link #solve} as
 * often as wanted. I. S. Duff and J. K. Reid, The multifrontal solution of indefinite sparse symmetric linear equations,
 * ACM Trans. Math. Softw. 9 (1983) 302 (from memory).
 */
public final class SparseMatrix {
    /** Below this share of its diagonal before factoring, a pivot counts as nothing: the structure can move. */
    private static final double LEAST_PIVOT = 1e-11;

    private final Fronts fronts;
    private final double[] values;
    private final int[] rows = new int[64];

    /**
     * An empty matrix.
     *
     * @param unknowns how many each vertex has
     * @throws TooLarge when it would not fit into memory
     */
    public SparseMatrix(Dissection cut, int[] unknowns) {
        this.fronts = new Fronts(cut, unknowns);
        this.values = new double[fronts.at[fronts.blocks()]];
    }

    public int size() {
        return fronts.blockOf.length;
    }

    /** How many numbers are kept. */
    public int kept() {
        return values.length;
    }

    /** The number of the first unknown of each vertex; its others follow. */
    public int[] firstUnknowns() {
        return fronts.firstOfVertex;
    }

    /**
     * Adds a small symmetric matrix between unknowns whose vertices stand in one group.
     *
     * @param unknowns at most 64, of which the first {@code count} are meant; one may stand there twice
     * @param square rows of {@code count} numbers
     */
    public void add(int[] unknowns, int count, double[] square) {
        for (int j = 0; j < count; j++) {
            int column = unknowns[j];
            int block = fronts.blockOf[column];
            boolean known = false;
            for (int i = 0; i < j; i++) {
                known |= fronts.blockOf[unknowns[i]] == block;
            }
            if (!known) {
                addTo(block, unknowns, count, square);
            }
        }
    }

    /** Adds what stands in the columns of one block. */
    private void addTo(int block, int[] unknowns, int count, double[] square) {
        int start = fronts.first[block];
        int end = fronts.first[block + 1];
        for (int i = 0; i < count; i++) {
            rows[i] = unknowns[i] < start ? -1 : fronts.rowOf(block, unknowns[i]);
        }
        int height = fronts.rows(block);
        for (int j = 0; j < count; j++) {
            if (rows[j] >= 0 && unknowns[j] < end) {
                int at = fronts.at[block] + rows[j] * height;
                for (int i = 0; i < count; i++) {
                    if (rows[i] >= rows[j]) {
                        values[at + rows[i]] += square[count * i + j];
                    }
                }
            }
        }
    }

    /**
     * Replaces the matrix by its factor.
     *
     * @return the first unknown whose pivot vanishes, or -1 when all is well
     */
    public int factor() {
        return new Factoring(fronts, values, LEAST_PIVOT).run();
    }

    /** The unknowns for one right-hand side. The matrix must have been factored. */
    public double[] solve(double[] right) {
        double[] x = Arrays.copyOf(right, size());
        for (int block = 0; block < fronts.blocks(); block++) {
            forward(block, x);
        }
        for (int block = fronts.blocks() - 1; block >= 0; block--) {
            backward(block, x);
        }
        return x;
    }

    private void forward(int block, double[] x) {
        int own = fronts.own(block);
        int[] beyond = fronts.beyond[block];
        int start = fronts.first[block];
        for (int j = 0; j < own; j++) {
            int at = fronts.at[block] + j * (own + beyond.length);
            double known = x[start + j] / values[at + j];
            x[start + j] = known;
            for (int i = j + 1; i < own; i++) {
                x[start + i] -= values[at + i] * known;
            }
            for (int i = 0; i < beyond.length; i++) {
                x[beyond[i]] -= values[at + own + i] * known;
            }
        }
    }

    private void backward(int block, double[] x) {
        int own = fronts.own(block);
        int[] beyond = fronts.beyond[block];
        int start = fronts.first[block];
        for (int j = own - 1; j >= 0; j--) {
            int at = fronts.at[block] + j * (own + beyond.length);
            double rest = x[start + j];
            for (int i = j + 1; i < own; i++) {
                rest -= values[at + i] * x[start + i];
            }
            for (int i = 0; i < beyond.length; i++) {
                rest -= values[at + own + i] * x[beyond[i]];
            }
            x[start + j] = rest / values[at + j];
        }
    }
}
