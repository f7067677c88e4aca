package pitchboard.measure;

/** Writes any quantity as it is shown to people: the one place that knows units and places. */
public final class QuantityText {
    private static final Ratio SQUARE_MM_PER_SQUARE_INCH = Ratio.of(64516, 100);

    private QuantityText() {}

    /**
     * With its unit, rounded once: lengths to the tape, ratios to three places, pitches to a tenth of a degree, printed
     * angles to a hundredth, areas to a hundredth of a square inch or to whole square millimetres, reckoned numbers to
     * four digits. Where a hair decides, {@link TrueText} hides less.
     */
    public static String write(Quantity quantity, Tape tape, Tape.Style style) {
        return quantity instanceof Length length
                ? TapeWriter.write(length, tape, style)
                : other(quantity, usualPlaces(quantity, tape), tape, style);
    }

    /** A ratio with at most so many decimals. */
    public static String ratio(Ratio ratio, int mostPlaces, Tape.Style style) {
        return printed(Decimals.trimmed(ratio, mostPlaces), style);
    }

    private static int usualPlaces(Quantity quantity, Tape tape) {
        if (quantity instanceof Ratio) {
            return 3;
        }
        if (quantity instanceof Pitch) {
            return 1;
        }
        return quantity instanceof Area && !tape.isInches() ? 0 : 2;
    }

    private static String other(Quantity quantity, int places, Tape tape, Tape.Style style) {
        if (quantity instanceof Ratio ratio) {
            return ratio(ratio, places, style);
        }
        if (quantity instanceof Pitch pitch) {
            return printed(Decimals.trimmed(pitch.degrees(), places), style) + degreeSign(style);
        }
        if (quantity instanceof Angle angle) {
            return ratio(angle.degrees(), places, style) + degreeSign(style);
        }
        if (quantity instanceof Area area) {
            return area(area, places, tape, style);
        }
        if (quantity instanceof Reckoned reckoned) {
            return reckoned.write(style);
        }
        return quantity instanceof Found found ? found.words() : Integer.toString(((Count) quantity).value());
    }

    private static String area(Area area, int places, Tape tape, Tape.Style style) {
        if (tape.isInches()) {
            return ratio(area.squareInches(), places, style) + " sq in";
        }
        Ratio squareMm = area.squareInches().times(SQUARE_MM_PER_SQUARE_INCH);
        return ratio(squareMm, places, style) + (style == Tape.Style.PRINTED ? " mm²" : " sq mm");
    }

    private static String degreeSign(Tape.Style style) {
        return style == Tape.Style.PRINTED ? "°" : " deg";
    }

    private static String printed(String number, Tape.Style style) {
        return style == Tape.Style.PRINTED ? number.replace('-', '\u2212') : number;
    }
}
