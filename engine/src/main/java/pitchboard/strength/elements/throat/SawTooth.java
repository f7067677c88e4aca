package pitchboard.strength.elements.throat;

/**
 * A board with equal right-angled notches along its upper edge, one after the other without a gap.
 *
 * @param levelMm the level side of a notch
 * @param plumbMm its plumb side
 * @param depthMm of the board, square to its edges
 */
public record SawTooth(double levelMm, double plumbMm, double depthMm, int teeth) {
    /** What is left of the depth under a notch, in mm. */
    public double throatMm() {
        return depthMm - levelMm * plumbMm / Math.hypot(levelMm, plumbMm);
    }
}
