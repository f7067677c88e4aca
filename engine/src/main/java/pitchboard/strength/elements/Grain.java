package pitchboard.strength.elements;

/**
 * Wood with its grain in a direction.
 *
 * @param cos of the angle from level to the grain, counterclockwise
 * @param sin of the same
 */
record Grain(Orthotropic wood, double cos, double sin) {
    double[] stiffness() {
        return wood.turned(cos, sin);
    }

    /** How far along the grain a place lies from the origin. */
    double along(double x, double y) {
        return cos * x + sin * y;
    }

    double across(double x, double y) {
        return cos * y - sin * x;
    }

    /** Stress along the grain, across it, and shear, from stress in level and plumb axes; into the same array. */
    void turn(double[] stress) {
        double xx = stress[0];
        double yy = stress[1];
        double xy = stress[2];
        stress[0] = cos * cos * xx + sin * sin * yy + 2 * cos * sin * xy;
        stress[1] = sin * sin * xx + cos * cos * yy - 2 * cos * sin * xy;
        stress[2] = cos * sin * (yy - xx) + (cos * cos - sin * sin) * xy;
    }
}
