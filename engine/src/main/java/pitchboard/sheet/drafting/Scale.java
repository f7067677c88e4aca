package pitchboard.sheet.drafting;

import java.util.List;
import pitchboard.measure.Tape;

/**
 * How much smaller than life a view is.
 *
 * @param name as the sheet says it
 * @param factor millimetres on paper for one millimetre of timber
 */
public record Scale(String name, double factor) {
    public static final Scale TRUE_SIZE = new Scale("true size", 1);

    /** Scales of an architect's rule for inches and feet, largest first. */
    public static final List<Scale> INCH = List.of(
            TRUE_SIZE,
            perFoot("6 in", 2),
            perFoot("3 in", 4),
            perFoot("1 1⁄2 in", 8),
            perFoot("1 in", 12),
            perFoot("3⁄4 in", 16),
            perFoot("1⁄2 in", 24),
            perFoot("3⁄8 in", 32),
            perFoot("1⁄4 in", 48),
            perFoot("1⁄8 in", 96));

    /** Reductions of ISO 5455, and some between that carpenters' scale rules have; largest first. */
    public static final List<Scale> METRIC = List.of(
            TRUE_SIZE,
            oneTo(2),
            oneTo(5),
            oneTo(10),
            oneTo(20),
            oneTo(25),
            oneTo(30),
            oneTo(40),
            oneTo(50),
            oneTo(100));

    /** The scales that the crew's rule has. */
    public static List<Scale> of(Tape tape) {
        return tape.isInches() ? INCH : METRIC;
    }

    public static Scale oneTo(int reduction) {
        return new Scale("1:" + reduction, 1.0 / reduction);
    }

    private static Scale perFoot(String inches, int reduction) {
        return new Scale(inches + " = 1 ft", 1.0 / reduction);
    }

    public boolean isTrueSize() {
        return factor == 1;
    }
}
