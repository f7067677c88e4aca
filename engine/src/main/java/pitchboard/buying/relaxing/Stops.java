package pitchboard.buying.relaxing;

/** What stops a column that enters the basis: the first basic value that would leave its bounds. */
final class Stops {
    private static final double PIVOT = 1e-8;

    private final Columns columns;
    private final int[] basic;
    private final double[] value;
    private final double[] turned;

    /** Looks at these arrays as they are whenever it is asked. */
    Stops(Columns columns, int[] basic, double[] value, double[] turned) {
        this.columns = columns;
        this.basic = basic;
        this.value = value;
        this.turned = turned;
    }

    /** How far the row lets the entering column go; infinite when it does not stop it. */
    double ratio(int row, double direction) {
        double change = -direction * turned[row];
        double low = columns.low(basic[row]);
        double high = columns.high(basic[row]);
        if (change < 0) {
            double stop = value[row] > high + Simplex.FEASIBLE
                    ? high
                    : value[row] >= low - Simplex.FEASIBLE ? low : Double.NEGATIVE_INFINITY;
            return (value[row] - stop) / -change;
        }
        double stop = value[row] < low - Simplex.FEASIBLE
                ? low
                : value[row] <= high + Simplex.FEASIBLE ? high : Double.POSITIVE_INFINITY;
        return (stop - value[row]) / change;
    }

    double reach(double direction) {
        double reach = Double.POSITIVE_INFINITY;
        for (int row = 0; row < turned.length; row++) {
            if (Math.abs(turned[row]) > PIVOT) {
                double slack = Simplex.FEASIBLE / Math.abs(turned[row]) / 100;
                reach = Math.min(reach, Math.max(0, ratio(row, direction)) + slack);
            }
        }
        return reach;
    }

    /** Among the rows that stop at about the same place, the one with the largest pivot; -1 when none does. */
    int pivot(double direction, double reach) {
        int best = -1;
        for (int row = 0; row < turned.length; row++) {
            boolean stops = Math.abs(turned[row]) > PIVOT && ratio(row, direction) <= reach;
            if (stops && (best < 0 || Math.abs(turned[row]) > Math.abs(turned[best]))) {
                best = row;
            }
        }
        return best;
    }
}
