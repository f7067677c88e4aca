package pitchboard.buying.search;

import pitchboard.buying.relaxing.Model;

/**
 * The cheapest counts of boards, in fractions, within two bounds and above every line of the {@link KeptPrices}. A
 * linear program with a column for each stock, few as they are; the dual simplex solves it anew each time. Doubles
 * throughout: its multipliers are a hint, and {@link CountBound} makes a bound of them.
 */
final class CountProgram {
    private static final double TINY = 1e-9;
    private static final double FEASIBLE = 1e-7;

    private final Model model;
    private final KeptPrices kept;

    /** The dictionary: each basic value as a sum over the columns, and what the columns add to the cost. */
    private double[][] rows = {};

    private double[] value = {};
    private final double[] reduced;

    /** Which stock (0 and up) or which line (-1 and down) is basic in a row, or stands in a column. */
    private int[] basic = {};

    private final int[] column;
    private final boolean[] atMost;
    private int columns;
    private int lines;
    private int[] least = {};
    private int[] most = {};
    private int pivots;

    CountProgram(Model model, KeptPrices kept) {
        this.model = model;
        this.kept = kept;
        reduced = new double[model.stocks()];
        column = new int[model.stocks()];
        atMost = new boolean[model.stocks()];
    }

    /** How many exchanges were made in all. */
    int pivots() {
        return pivots;
    }

    /** @return the row that cannot be brought within its bounds, or -1 */
    int run(int[] fewest, int[] greatest) {
        least = fewest;
        most = greatest;
        write();
        int limit = 20 * (columns + 1) + 100;
        for (int step = 0; step < limit; step++) {
            int row = worst();
            if (row < 0) {
                return -1;
            }
            int enters = entering(row);
            if (enters < 0) {
                return row;
            }
            pivot(row, enters);
            pivots++;
        }
        return -1;
    }

    private void write() {
        columns = 0;
        for (int stock = 0; stock < model.stocks(); stock++) {
            if (least[stock] < most[stock]) {
                reduced[columns] = model.cost[stock];
                atMost[columns] = false;
                column[columns++] = stock;
            }
        }
        lines = kept.size();
        if (rows.length < lines) {
            rows = new double[2 * lines][model.stocks()];
            value = new double[2 * lines];
            basic = new int[2 * lines];
        }
        for (int line = 0; line < lines; line++) {
            double[] share = kept.get(line).share();
            double sum = -share[model.stocks()];
            for (int stock = 0; stock < model.stocks(); stock++) {
                sum += share[stock] * least[stock];
            }
            for (int at = 0; at < columns; at++) {
                rows[line][at] = share[column[at]];
            }
            value[line] = sum;
            basic[line] = -1 - line;
        }
    }

    private double low(int what) {
        return what < 0 ? 0 : least[what];
    }

    private double high(int what) {
        return what < 0 ? Double.POSITIVE_INFINITY : most[what];
    }

    private boolean isLow(int row) {
        return value[row] < low(basic[row]);
    }

    /** The row that is farthest outside its bounds, or -1. */
    private int worst() {
        int worst = -1;
        double farthest = FEASIBLE;
        for (int row = 0; row < lines; row++) {
            double off = Math.max(low(basic[row]) - value[row], value[row] - high(basic[row]));
            if (off > farthest) {
                farthest = off;
                worst = row;
            }
        }
        return worst;
    }

    /** The column that brings the row back to its bound at the least cost, or -1. */
    private int entering(int row) {
        double sign = isLow(row) ? 1 : -1;
        int best = -1;
        double cheapest = 0;
        for (int at = 0; at < columns; at++) {
            double along = sign * rows[row][at] * (atMost[at] ? -1 : 1);
            if (along > TINY) {
                double ratio = Math.abs(reduced[at]) / along;
                boolean steeper = ratio < cheapest + TINY && best >= 0 && along > Math.abs(rows[row][best]);
                if (best < 0 || ratio < cheapest - TINY || steeper) {
                    best = at;
                    cheapest = ratio;
                }
            }
        }
        return best;
    }

    private void pivot(int row, int enters) {
        int leaves = basic[row];
        boolean toLow = isLow(row);
        double step = ((toLow ? low(leaves) : high(leaves)) - value[row]) / rows[row][enters];
        int what = column[enters];
        double from = atMost[enters] ? high(what) : low(what);
        for (int other = 0; other < lines; other++) {
            value[other] += step * rows[other][enters];
        }
        double by = 1 / rows[row][enters];
        double[] line = rows[row];
        for (int at = 0; at < columns; at++) {
            line[at] = at == enters ? by : -line[at] * by;
        }
        for (int other = 0; other < lines; other++) {
            double factor = rows[other][enters];
            if (other != row && factor != 0) {
                replace(rows[other], line, factor, enters);
            }
        }
        replace(reduced, line, reduced[enters], enters);
        basic[row] = what;
        value[row] = from + step;
        column[enters] = leaves;
        atMost[enters] = !toLow;
    }

    private void replace(double[] in, double[] line, double factor, int enters) {
        in[enters] = 0;
        for (int at = 0; at < columns; at++) {
            in[at] += factor * line[at];
        }
    }

    /** Writes the counts. */
    void counts(double[] into) {
        for (int stock = 0; stock < into.length; stock++) {
            into[stock] = least[stock];
        }
        for (int at = 0; at < columns; at++) {
            if (column[at] >= 0 && atMost[at]) {
                into[column[at]] = most[column[at]];
            }
        }
        for (int row = 0; row < lines; row++) {
            if (basic[row] >= 0) {
                into[basic[row]] = value[row];
            }
        }
    }

    /** How often each line is added up to bound the cost. */
    double[] multipliers() {
        double[] multiplier = new double[lines];
        for (int at = 0; at < columns; at++) {
            if (column[at] < 0) {
                multiplier[-1 - column[at]] = Math.max(0, reduced[at]);
            }
        }
        return multiplier;
    }

    /** How often each line is added up to show that the row cannot be brought within its bounds. */
    double[] refutation(int row) {
        double sign = isLow(row) ? 1 : -1;
        double[] multiplier = new double[lines];
        if (basic[row] < 0) {
            multiplier[-1 - basic[row]] = 1;
        }
        for (int at = 0; at < columns; at++) {
            if (column[at] < 0) {
                multiplier[-1 - column[at]] = Math.max(0, -sign * rows[row][at]);
            }
        }
        return multiplier;
    }
}
