package pitchboard.measure;

/** Writes any quantity as it is shown to people: the one place that knows units and places. */
public final class QuantityText {
    private static final int MOST_PLACES = 9;
    private static final Ratio SQUARE_MM_PER_SQUARE_INCH = Ratio.of(64516, 100);

    private QuantityText() {}

    /**
     * With its unit, rounded once: lengths to the tape, ratios to three places, areas to hundredths of a square inch or
     * whole square millimetres, pitches to a tenth of a degree. A printed angle is never rounded below a hundredth.
     */
    public static String write(Quantity quantity, Tape tape, Tape.Style style) {
        if (quantity instanceof Length length) {
            return TapeWriter.write(length, tape, style);
        }
        if (quantity instanceof Ratio ratio) {
            return ratio(ratio, 3, style);
        }
        if (quantity instanceof Pitch pitch) {
            return printed(Decimals.fixed(pitch.degrees(), 1), style) + degreeSign(style);
        }
        if (quantity instanceof Angle angle) {
            return printed(Decimals.trimmed(angle.degrees(), 2), style) + degreeSign(style);
        }
        if (quantity instanceof Area area) {
            return area(area, tape.isInches() ? 2 : 0, tape, style);
        }
        return Integer.toString(((Count) quantity).value());
    }

    /**
     * As {@link #write}, but with as many decimals as it takes to look different from {@code other}: 7.7501 in beside
     * a limit of 7 3/4 in must not read 7 3/4 as well, or a fail would look like a pass.
     */
    public static String writeApart(Quantity quantity, Quantity other, Tape tape, Tape.Style style) {
        String text = write(quantity, tape, style);
        if (quantity.equals(other) || !text.equals(write(other, tape, style))) {
            return text;
        }
        for (int places = 1; places <= MOST_PLACES; places++) {
            String finer = decimal(quantity, places, tape, style);
            if (!finer.equals(decimal(other, places, tape, style))) {
                return finer;
            }
        }
        return text;
    }

    /** A ratio with at most so many decimals. */
    public static String ratio(Ratio ratio, int mostPlaces, Tape.Style style) {
        return printed(Decimals.trimmed(ratio, mostPlaces), style);
    }

    private static String decimal(Quantity quantity, int places, Tape tape, Tape.Style style) {
        if (quantity instanceof Length length) {
            return tape.isInches()
                    ? TapeWriter.decimalInches(length, places, style)
                    : TapeWriter.mm(length, places, style);
        }
        if (quantity instanceof Pitch pitch) {
            return printed(Decimals.fixed(pitch.degrees(), places), style) + degreeSign(style);
        }
        if (quantity instanceof Angle angle) {
            return printed(Decimals.fixed(angle.degrees(), places), style) + degreeSign(style);
        }
        if (quantity instanceof Area area) {
            return area(area, places, tape, style);
        }
        return quantity instanceof Ratio ratio ? ratio(ratio, places, style) : write(quantity, tape, style);
    }

    private static String area(Area area, int places, Tape tape, Tape.Style style) {
        if (tape.isInches()) {
            return printed(Decimals.trimmed(area.squareInches(), places), style) + " sq in";
        }
        Ratio squareMm = area.squareInches().times(SQUARE_MM_PER_SQUARE_INCH);
        String unit = style == Tape.Style.PRINTED ? " mm²" : " sq mm";
        return printed(Decimals.trimmed(squareMm, places), style) + unit;
    }

    private static String degreeSign(Tape.Style style) {
        return style == Tape.Style.PRINTED ? "°" : " deg";
    }

    private static String printed(String number, Tape.Style style) {
        return style == Tape.Style.PRINTED ? number.replace('-', '\u2212') : number;
    }
}
