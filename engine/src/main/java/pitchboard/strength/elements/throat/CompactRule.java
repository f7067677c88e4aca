package pitchboard.strength.elements.throat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The instant answer for a saw-tooth: it sinks like a plain board, shear included, that is 0.53 in deeper than the throat.
 *
 * <p>Found by computation, not published: eleven boards with rise 6.5 to 8 in, run 9 to 12 in, depth 9.25 to 13.25 in and 5
 * to 14 teeth, Douglas-fir and alike, under two loads each; the best extra depth lay between 0.48 and 0.61 in. Elastic
 * deflection only; it says nothing of strength.
 */
public final class CompactRule {
    private static final double INCH_MM = 25.4;

    /** In mm. */
    public static final double EXTRA_DEPTH_MM = 0.53 * INCH_MM;

    private CompactRule() {}

    /** Why the rule was never tried on such a board; empty when it was. */
    public static List<String> outside(SawTooth board) {
        List<String> reasons = new ArrayList<>();
        check(reasons, "the plumb side of a notch", board.plumbMm(), 6.5, 8);
        check(reasons, "the level side of a notch", board.levelMm(), 9, 12);
        check(reasons, "the depth of the board", board.depthMm(), 9.25, 13.25);
        if (board.teeth() < 5 || board.teeth() > 14) {
            reasons.add("the rule was tried with 5 to 14 teeth, not with " + board.teeth());
        }
        return reasons;
    }

    private static void check(List<String> reasons, String what, double mm, double least, double most) {
        double slack = 1e-9;
        if (!(mm >= least * INCH_MM - slack && mm <= most * INCH_MM + slack)) {
            reasons.add("the rule was tried with " + what + " from " + least + " to " + most + " in, not with "
                    + mm / INCH_MM + " in");
        }
    }

    /**
     * The plain beam that sinks as the saw-tooth does.
     *
     * @param throat a beam with the depth of the throat, its span and its loads
     * @return nothing when the rule was never tried on such a board
     */
    public static Optional<SlopedBeam> beam(SawTooth board, SlopedBeam throat) {
        return outside(board).isEmpty()
                ? Optional.of(throat.withDepth(board.throatMm() + EXTRA_DEPTH_MM))
                : Optional.empty();
    }
}
