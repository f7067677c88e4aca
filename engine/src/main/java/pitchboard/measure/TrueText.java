package pitchboard.measure;

/**
 * Writes a quantity so that nothing is hidden by rounding to a tape: a length that lies on a line of the tape as the
 * tape has it, any other in decimals. Inches stay inches, as codes print them. For verdicts, where a hair decides.
 */
public final class TrueText {
    private static final int PLACES = 3;
    private static final int MOST_PLACES = 9;

    private TrueText() {}

    public static String write(Quantity quantity, Tape tape, Tape.Style style) {
        return write(quantity, tape, style, PLACES);
    }

    /** The same, with more decimals when the two would read alike and are not; beyond a billionth nobody asks. */
    public static String writeApart(Quantity quantity, Quantity from, Tape tape, Tape.Style style) {
        int places = PLACES;
        while (places < MOST_PLACES && decimals(quantity, tape, places).equals(decimals(from, tape, places))) {
            places++;
        }
        return write(quantity, tape, style, quantity.equals(from) ? PLACES : places);
    }

    private static String decimals(Quantity quantity, Tape tape, int places) {
        return quantity instanceof Length length
                ? decimals(length, tape, Tape.Style.PLAIN, places)
                : write(quantity, tape, Tape.Style.PLAIN, places);
    }

    private static String write(Quantity quantity, Tape tape, Tape.Style style, int places) {
        if (quantity instanceof Length length) {
            return length(length, tape, style, places);
        }
        if (quantity instanceof Pitch pitch) {
            return Decimals.trimmed(pitch.degrees(), places - 2) + (style == Tape.Style.PRINTED ? "°" : " deg");
        }
        if (quantity instanceof Angle angle) {
            return Decimals.trimmed(angle.degrees(), places - 1) + (style == Tape.Style.PRINTED ? "°" : " deg");
        }
        return quantity instanceof Ratio ratio ? slope(ratio, places) : QuantityText.write(quantity, tape, style);
    }

    private static String length(Length length, Tape tape, Tape.Style style, int places) {
        Length line = length.rounded(tape.graduation());
        if (line.equals(length)) {
            return TapeWriter.writeRunning(length, tape, style);
        }
        return decimals(length, tape, style, places);
    }

    private static String decimals(Length length, Tape tape, Tape.Style style, int places) {
        String number = tape.isInches()
                ? TapeWriter.decimalInches(length, places, style)
                : TapeWriter.mm(length, places, style);
        return withoutEndZeros(number);
    }

    private static String withoutEndZeros(String numberAndUnit) {
        int unit = numberAndUnit.indexOf(' ');
        int end = unit;
        while (numberAndUnit.charAt(end - 1) == '0') {
            end--;
        }
        int kept = numberAndUnit.charAt(end - 1) == '.' ? end - 1 : end;
        return numberAndUnit.substring(0, kept) + numberAndUnit.substring(unit);
    }

    /** Slopes are read as one in so many. */
    private static String slope(Ratio ratio, int places) {
        boolean gentle = ratio.signum() > 0 && ratio.compareTo(Ratio.ONE) < 0;
        return gentle ? "1 in " + Decimals.trimmed(ratio.inverse(), places - 2) : Decimals.trimmed(ratio, places);
    }
}
