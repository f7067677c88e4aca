package pitchboard.sheet.type;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Face;
import pitchboard.sheet.Run;

/** Sets strings in type: bold words between {@code **}, fractions round U+2044 as small raised and lowered figures. */
public final class Typesetter {
    private static final String BOLD_SWITCH = "**";

    private Typesetter() {}

    /** The width of one line in millimetres. */
    public static double width(String text, Lettering lettering) {
        boolean isPlain = text.indexOf(Fraction.SLASH) < 0 && !text.contains(BOLD_SWITCH) && text.indexOf('\n') < 0;
        return isPlain
                ? lettering.em() * Alphabet.width(text, lettering.face())
                : line(text, lettering).width();
    }

    /** Sets one line; a line break in it counts as a space. */
    public static TypeLine line(String text, Lettering lettering) {
        Composer composer = new Composer(lettering.em());
        String plain = text.replace('\n', ' ');
        Face face = lettering.face();
        int from = 0;
        for (int at = plain.indexOf(BOLD_SWITCH); at >= 0; at = plain.indexOf(BOLD_SWITCH, from)) {
            composer.add(plain.substring(from, at), face);
            face = face == lettering.face() ? Face.BOLD : lettering.face();
            from = at + BOLD_SWITCH.length();
        }
        composer.add(plain.substring(from), face);
        return composer.line();
    }

    /**
     * Sets running text to a width. Breaks at spaces; a line break in the text starts a new line, and one that begins
     * with a bullet hangs.
     */
    public static Paragraph paragraph(String text, Lettering lettering, double width) {
        List<Paragraph.Row> rows = new ArrayList<>();
        boolean bold = false;
        for (String part : text.split("\n", -1)) {
            LineBreaker breaker = new LineBreaker(lettering, width);
            rows.addAll(breaker.rows(part, bold));
            bold = breaker.endsBold();
        }
        return new Paragraph(rows, lettering);
    }

    static String boldSwitch() {
        return BOLD_SWITCH;
    }

    /** Lays runs side by side. */
    private static final class Composer {
        private final double em;
        private final List<Run> runs = new ArrayList<>();
        private final StringBuilder reads = new StringBuilder();
        private double pen;

        Composer(double em) {
            this.em = em;
        }

        void add(String text, Face face) {
            reads.append(text);
            int from = 0;
            for (int slash = text.indexOf(Fraction.SLASH);
                    slash >= 0;
                    slash = text.indexOf(Fraction.SLASH, slash + 1)) {
                int start = Fraction.startBefore(text, slash, from);
                int end = Fraction.endAfter(text, slash);
                if (start < slash && end > slash + 1) {
                    addPlain(text.substring(from, start), face);
                    pen = Fraction.set(
                            text.substring(start, slash), text.substring(slash + 1, end), pen, em, face, runs);
                    from = end;
                }
            }
            addPlain(text.substring(from), face);
        }

        private void addPlain(String letters, Face face) {
            if (!letters.isEmpty()) {
                double width = em * Alphabet.width(letters, face);
                runs.add(new Run(letters, pen, 0, em, face, width));
                pen += width;
            }
        }

        TypeLine line() {
            return new TypeLine(runs, pen, reads.toString());
        }
    }
}
