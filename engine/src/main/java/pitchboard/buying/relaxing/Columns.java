package pitchboard.buying.relaxing;

/** The columns of the relaxation: a kind's surplus, then a stock's boards between two bounds, then patterns. */
final class Columns {
    private final Patterns patterns;
    private final int kinds;
    private final int rows;
    private int[] least = {};
    private int[] most = {};

    Columns(Patterns patterns, int kinds, int rows) {
        this.patterns = patterns;
        this.kinds = kinds;
        this.rows = rows;
    }

    void bound(int[] fewest, int[] greatest) {
        least = fewest;
        most = greatest;
    }

    int least(int stock) {
        return least[stock];
    }

    int most(int stock) {
        return most[stock];
    }

    boolean isFixed(int stock) {
        return least[stock] == most[stock];
    }

    boolean isBoards(int column) {
        return column >= kinds && column < rows;
    }

    double low(int column) {
        return isBoards(column) ? least[column - kinds] : 0;
    }

    double high(int column) {
        return isBoards(column) ? most[column - kinds] : Double.POSITIVE_INFINITY;
    }

    /** The product of a line as long as there are rows with the column. */
    double along(int column, double[] line) {
        if (column < rows) {
            return -line[column];
        }
        Pattern pattern = patterns.get(column - rows);
        double sum = line[kinds + pattern.stock()];
        for (int i = 0; i < pattern.kinds().length; i++) {
            sum += line[pattern.kinds()[i]] * pattern.counts()[i];
        }
        return sum;
    }

    /** Writes the column into a matrix of zeros. */
    void write(int column, double[][] matrix, int at) {
        if (column < rows) {
            matrix[column][at] = -1;
            return;
        }
        Pattern pattern = patterns.get(column - rows);
        matrix[kinds + pattern.stock()][at] = 1;
        for (int i = 0; i < pattern.kinds().length; i++) {
            matrix[pattern.kinds()[i]][at] = pattern.counts()[i];
        }
    }
}
