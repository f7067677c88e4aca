package pitchboard.buying.relaxing;

import java.util.Arrays;

/**
 * The linear relaxation over the patterns known so far: how often to cut each pattern, in fractions. Rows: the pieces of
 * each kind are cut at least as often as wanted; the patterns of each stock are as many as its boards, which lie between
 * two bounds and cost money. Primal, with bounds, and started again from where it last stood.
 *
 * <p>Doubles throughout: what comes out is a hint. Whoever needs a bound turns the duals into {@link Prices}.
 */
public final class Simplex {
    private static final double SLACK = 1e-9;
    static final double FEASIBLE = 1e-7;
    private static final int ANEW_AFTER = 100;

    private final Patterns patterns;
    private final Columns columns;
    private final Stops stops;
    private final int kinds;
    private final int rows;
    private final Inverse inverse;

    /** Which column is basic in a row: a kind's surplus, then a stock's boards, then patterns. */
    private final int[] basic;

    private int[] rowOf = new int[1024];
    private final boolean[] atMost;
    private final double[] value;
    final double[] dual;
    private final double[] turned;
    private final double[] right;
    private final double[] cost;
    private int[] demand;
    private boolean infeasible;
    private int exchanges;
    private int steps;

    Simplex(Model model, Patterns patterns) {
        this.patterns = patterns;
        kinds = model.kinds();
        rows = kinds + model.stocks();
        columns = new Columns(patterns, kinds, rows);
        inverse = new Inverse(rows);
        basic = new int[rows];
        atMost = new boolean[model.stocks()];
        value = new double[rows];
        dual = new double[rows];
        turned = new double[rows];
        stops = new Stops(columns, basic, value, turned);
        right = new double[rows];
        cost = new double[model.stocks()];
        long highest = 1;
        for (long each : model.cost) {
            highest = Math.max(highest, each);
        }
        for (int stock = 0; stock < cost.length; stock++) {
            cost[stock] = (double) model.cost[stock] / highest;
        }
        startAfresh();
    }

    private void startAfresh() {
        Arrays.fill(rowOf, -1);
        Arrays.fill(atMost, false);
        for (int row = 0; row < rows; row++) {
            basic[row] = row;
            rowOf[row] = row;
        }
        inverse.reset();
        exchanges = 0;
    }

    /** Sets the pieces wanted and the bounds on the boards of each stock. */
    void ask(int[] wanted, int[] fewest, int[] greatest) {
        demand = wanted;
        columns.bound(fewest, greatest);
        valuesAnew();
    }

    /** How many exchanges were made in all. */
    int steps() {
        return steps;
    }

    /** Whether the last run ended without a solution among the patterns known; its duals then say why. */
    boolean isInfeasible() {
        return infeasible;
    }

    /** Boards of the stock, as a fraction. */
    double boards(int stock) {
        int row = rowOf[kinds + stock];
        return row >= 0 ? value[row] : atMost[stock] ? columns.most(stock) : columns.least(stock);
    }

    /** How often the pattern is cut, as a fraction. */
    public double times(int pattern) {
        int column = rows + pattern;
        return column < rowOf.length && rowOf[column] >= 0 ? value[rowOf[column]] : 0;
    }

    /**
     * Runs to the best solution, or to the least shortfall if there is none.
     *
     * @return false when it got stuck; the duals are then some duals, good for a bound as any
     */
    boolean run() {
        makeRoom();
        int limit = 50 * rows + 500;
        for (int step = 0; step < limit; step++) {
            infeasible = setDuals();
            int entering = choose();
            if (entering < 0) {
                return true;
            }
            move(entering);
            steps++;
            if (exchanges >= ANEW_AFTER) {
                invertAnew();
            }
        }
        return false;
    }

    private void makeRoom() {
        int needed = rows + patterns.size();
        if (needed > rowOf.length) {
            int old = rowOf.length;
            rowOf = Arrays.copyOf(rowOf, 2 * needed);
            Arrays.fill(rowOf, old, rowOf.length, -1);
        }
    }

    /** Sets the duals of the cost, or of the shortfall while there is one; answers whether there is. */
    private boolean setDuals() {
        Arrays.fill(dual, 0);
        boolean isShort = false;
        for (int row = 0; row < rows; row++) {
            double sign = value[row] < columns.low(basic[row]) - FEASIBLE
                    ? -1
                    : value[row] > columns.high(basic[row]) + FEASIBLE ? 1 : 0;
            if (sign != 0) {
                isShort = true;
                addTo(dual, inverse.row(row), sign);
            }
        }
        if (!isShort) {
            for (int stock = 0; stock < cost.length; stock++) {
                int row = rowOf[kinds + stock];
                if (row >= 0 && cost[stock] != 0) {
                    addTo(dual, inverse.row(row), cost[stock]);
                }
            }
        }
        return isShort;
    }

    private static void addTo(double[] sum, double[] line, double factor) {
        for (int column = 0; column < sum.length; column++) {
            sum[column] += factor * line[column];
        }
    }

    /** The column that helps most, or -1. */
    private int choose() {
        int best = -1;
        double mostGain = SLACK;
        for (int column = 0; column < rows + patterns.size(); column++) {
            if (rowOf[column] < 0) {
                double gain = gain(column);
                if (gain > mostGain) {
                    mostGain = gain;
                    best = column;
                }
            }
        }
        return best;
    }

    private double gain(int column) {
        double along = columns.along(column, dual);
        if (!columns.isBoards(column)) {
            return along;
        }
        int stock = column - kinds;
        double each = along - (infeasible ? 0 : cost[stock]);
        return columns.isFixed(stock) ? 0 : atMost[stock] ? -each : each;
    }

    /** Lets the column grow, or shrink from its upper bound, until something stops it. */
    private void move(int column) {
        boolean shrinks = columns.isBoards(column) && atMost[column - kinds];
        double direction = shrinks ? -1 : 1;
        for (int row = 0; row < rows; row++) {
            turned[row] = columns.along(column, inverse.row(row));
        }
        double furthest = columns.high(column) - columns.low(column);
        double reach = Math.min(furthest, stops.reach(direction));
        int pivot = stops.pivot(direction, reach);
        if (pivot < 0 || reach >= furthest) {
            shift(direction * furthest);
            atMost[column - kinds] = !shrinks;
            return;
        }
        double step = Math.max(0, stops.ratio(pivot, direction));
        shift(direction * step);
        int leaving = basic[pivot];
        if (columns.isBoards(leaving)) {
            int stock = leaving - kinds;
            atMost[stock] =
                    Math.abs(value[pivot] - columns.most(stock)) < Math.abs(value[pivot] - columns.least(stock));
        }
        rowOf[leaving] = -1;
        basic[pivot] = column;
        rowOf[column] = pivot;
        value[pivot] = (shrinks ? columns.high(column) : columns.low(column)) + direction * step;
        inverse.exchange(pivot, turned);
        exchanges++;
    }

    private void shift(double by) {
        for (int row = 0; row < rows; row++) {
            value[row] -= by * turned[row];
        }
    }

    private void invertAnew() {
        double[][] matrix = new double[rows][rows];
        for (int row = 0; row < rows; row++) {
            columns.write(basic[row], matrix, row);
        }
        exchanges = 0;
        if (!inverse.invert(matrix)) {
            startAfresh();
        }
        valuesAnew();
    }

    private void valuesAnew() {
        for (int kind = 0; kind < kinds; kind++) {
            right[kind] = demand[kind];
        }
        for (int stock = 0; stock < cost.length; stock++) {
            boolean isBasic = rowOf[kinds + stock] >= 0;
            right[kinds + stock] = isBasic ? 0 : atMost[stock] ? columns.most(stock) : columns.least(stock);
        }
        inverse.times(right, value);
    }
}
