package pitchboard.measure;

/** Writes any quantity as it is shown to people: the one place that knows units and places. */
public final class QuantityText {
    private static final int RATIO_PLACES = 3;
    private static final Ratio SQUARE_MM_PER_SQUARE_INCH = Ratio.of(64516, 100);

    private QuantityText() {}

    public static String write(Quantity quantity, Tape tape, Tape.Style style) {
        if (quantity instanceof Length length) {
            return TapeWriter.write(length, tape, style);
        }
        if (quantity instanceof Ratio ratio) {
            return printed(Decimals.trimmed(ratio, RATIO_PLACES), style);
        }
        if (quantity instanceof Pitch pitch) {
            return printed(Decimals.fixed(pitch.degrees(), 1), style) + degreeSign(style);
        }
        if (quantity instanceof Angle angle) {
            return printed(Decimals.trimmed(angle.degrees(), 2), style) + degreeSign(style);
        }
        if (quantity instanceof Area area) {
            return area(area, tape, style);
        }
        return Integer.toString(((Count) quantity).value());
    }

    private static String area(Area area, Tape tape, Tape.Style style) {
        if (tape.isInches()) {
            return printed(Decimals.trimmed(area.squareInches(), 2), style) + " sq in";
        }
        Ratio squareMm = area.squareInches().times(SQUARE_MM_PER_SQUARE_INCH);
        return printed(Decimals.fixed(squareMm, 0), style) + (style == Tape.Style.PRINTED ? " mm²" : " sq mm");
    }

    private static String degreeSign(Tape.Style style) {
        return style == Tape.Style.PRINTED ? "°" : " deg";
    }

    private static String printed(String number, Tape.Style style) {
        return style == Tape.Style.PRINTED ? number.replace('-', '\u2212') : number;
    }
}
