package pitchboard.strength.elements;

/**
 * Where a row of answers from finer and finer meshes leads.
 *
 * @param value the limit when the row settles, else the answer of the finest mesh
 * @param finest the answer of the finest mesh
 * @param uncertain how far the finest answer may still be from the limit, as a share of the value: its distance from the
 *     limit, or from the answer before when the row does not settle
 * @param settled whether three answers drew together evenly enough to tell a limit
 */
public record Limit(double value, double finest, double uncertain, boolean settled) {
    /** Each refinement must shrink the change at least by this, or no limit is told. */
    private static final double LEAST_SHRINKING = 1.5;

    /**
     * From answers on meshes of which each halves the triangles of the one before.
     *
     * <p>L. F. Richardson's deferred approach to the limit with the order taken from the last three answers; the rate at
     * sharp corners is not known beforehand.
     *
     * @param answers at least one, coarsest first
     */
    public static Limit of(double... answers) {
        int last = answers.length - 1;
        double finest = answers[last];
        if (last < 1) {
            return new Limit(finest, finest, 1, false);
        }
        double change = finest - answers[last - 1];
        if (last >= 2) {
            double shrinking = (answers[last - 1] - answers[last - 2]) / change;
            if (shrinking >= LEAST_SHRINKING) {
                double limit = finest + change / (shrinking - 1);
                return new Limit(limit, finest, share(limit - finest, limit), true);
            }
        }
        return new Limit(finest, finest, share(change, finest), change == 0);
    }

    private static double share(double part, double whole) {
        return part == 0 ? 0 : Math.abs(part / whole);
    }
}
