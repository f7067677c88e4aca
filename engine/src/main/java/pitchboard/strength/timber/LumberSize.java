package pitchboard.strength.timber;

import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;

/**
 * A board by the name the yard has for it, and what it measures.
 *
 * @param thickness in name, in inches: 2 for a 2x12
 * @param width in name, in inches: 12 for a 2x12
 * @param service dry or green, as its actual size was surfaced
 */
public record LumberSize(int thickness, int width, Surfaced service) {
    /** When a board was surfaced: green boards are a little larger. */
    public enum Surfaced {
        DRY,
        GREEN
    }

    /** A side in name, surfaced dry and surfaced green (NDS Supplement 2018, Table 1A). */
    private record Side(int name, Length dry, Length green) {}

    private static final List<Side> THICKNESSES = List.of(
            new Side(2, Length.inches(1, 1, 2), Length.inches(1, 9, 16)),
            new Side(3, Length.inches(2, 1, 2), Length.inches(2, 9, 16)),
            new Side(4, Length.inches(3, 1, 2), Length.inches(3, 9, 16)));

    private static final List<Side> WIDTHS = List.of(
            new Side(2, Length.inches(1, 1, 2), Length.inches(1, 9, 16)),
            new Side(3, Length.inches(2, 1, 2), Length.inches(2, 9, 16)),
            new Side(4, Length.inches(3, 1, 2), Length.inches(3, 9, 16)),
            new Side(5, Length.inches(4, 1, 2), Length.inches(4, 5, 8)),
            new Side(6, Length.inches(5, 1, 2), Length.inches(5, 5, 8)),
            new Side(8, Length.inches(7, 1, 4), Length.inches(7, 1, 2)),
            new Side(10, Length.inches(9, 1, 4), Length.inches(9, 1, 2)),
            new Side(12, Length.inches(11, 1, 4), Length.inches(11, 1, 2)),
            new Side(14, Length.inches(13, 1, 4), Length.inches(13, 1, 2)),
            new Side(16, Length.inches(15, 1, 4), Length.inches(15, 1, 2)));

    /** A metric tape rounds a size to the millimetre, so that much is the same board. */
    private static final Length SAME = Length.mm(1);

    /** The dressed board of these sides; nothing when the table has no such board. */
    public static Answer<LumberSize> of(Length thickness, Length width) {
        for (Surfaced service : Surfaced.values()) {
            int nominalThickness = nameOf(THICKNESSES, thickness, service);
            int nominalWidth = nameOf(WIDTHS, width, service);
            if (nominalThickness > 0 && nominalWidth > 0) {
                return Answer.known(new LumberSize(nominalThickness, nominalWidth, service));
            }
        }
        return Answer.unknown("the tables of graded lumber have no board of " + decimal(thickness) + " by "
                + decimal(width)
                + " in: thicknesses are 1.5, 2.5 and 3.5 in, widths 1.5, 2.5, 3.5, 4.5, 5.5, 7.25, 9.25,"
                + " 11.25, 13.25 and 15.25 in, and a little more for boards surfaced green");
    }

    /**
     * A dressed board by name.
     *
     * @throws IllegalArgumentException when the table has no such name
     */
    public static LumberSize named(int thickness, int width) {
        LumberSize size = new LumberSize(thickness, width, Surfaced.DRY);
        size.actualThickness();
        size.actualWidth();
        return size;
    }

    public LumberSize surfacedGreen() {
        return new LumberSize(thickness, width, Surfaced.GREEN);
    }

    private static String decimal(Length length) {
        return Decimals.trimmed(length.approxMm() / 25.4, 3);
    }

    private static int nameOf(List<Side> sides, Length actual, Surfaced service) {
        return sides.stream()
                .filter(side -> actual(side, service).minus(actual).abs().isAtMost(SAME))
                .mapToInt(Side::name)
                .findFirst()
                .orElse(0);
    }

    private static Length actual(Side side, Surfaced service) {
        return service == Surfaced.DRY ? side.dry() : side.green();
    }

    public Length actualThickness() {
        return actual(THICKNESSES, thickness);
    }

    public Length actualWidth() {
        return actual(WIDTHS, width);
    }

    private Length actual(List<Side> sides, int name) {
        return sides.stream()
                .filter(side -> side.name() == name)
                .map(side -> actual(side, service))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no board is called " + thickness + "x" + width));
    }

    /** Such as {@code 2x12}. */
    public String name() {
        return thickness + "x" + width;
    }
}
