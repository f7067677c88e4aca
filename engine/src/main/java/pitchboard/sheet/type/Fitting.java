package pitchboard.sheet.type;

/** Makes one line fit a width that cannot give way: smaller letters first, then fewer of them. */
public final class Fitting {
    private static final double SMALLEST = 0.7;
    private static final double STEP = 0.05;

    private Fitting() {}

    /** The line as large as it fits, down to seven tenths of the lettering; longer text ends in an ellipsis. */
    public static TypeLine line(String text, Lettering lettering, double width) {
        for (int i = 0; 1 - i * STEP >= SMALLEST; i++) {
            TypeLine line = Typesetter.line(text, scaled(lettering, 1 - i * STEP));
            if (line.width() <= width) {
                return line;
            }
        }
        return shortened(text, scaled(lettering, SMALLEST), width);
    }

    private static Lettering scaled(Lettering lettering, double by) {
        return new Lettering(lettering.em() * by, lettering.face());
    }

    private static TypeLine shortened(String text, Lettering lettering, double width) {
        for (int length = text.length() - 1; length > 0; length--) {
            TypeLine line = Typesetter.line(text.substring(0, length).strip() + "…", lettering);
            if (line.width() <= width) {
                return line;
            }
        }
        return Typesetter.line("", lettering);
    }
}
