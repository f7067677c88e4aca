package pitchboard.sheet.type;

import java.util.ArrayList;
import java.util.List;

/** Breaks one line of running text into rows that fit a width. A word that is wider than the width stands alone. */
final class LineBreaker {
    private static final String BULLET = "• ";

    private final Lettering lettering;
    private final double width;
    private final List<Paragraph.Row> rows = new ArrayList<>();
    private final StringBuilder row = new StringBuilder();
    private boolean rowStartsBold;
    private boolean bold;
    private double indent;

    LineBreaker(Lettering lettering, double width) {
        this.lettering = lettering;
        this.width = width;
    }

    boolean endsBold() {
        return bold;
    }

    List<Paragraph.Row> rows(String text, boolean startsBold) {
        bold = startsBold;
        rowStartsBold = startsBold;
        double hang = text.startsWith(BULLET) ? Typesetter.width(BULLET, lettering.regular()) : 0;
        for (String word : joinFractions(text).split(" ", -1)) {
            append(word.replace('\u00a0', ' '), hang);
        }
        finishRow();
        return rows;
    }

    /** Because "9 3/4" must not be torn apart at its space: that space is held as a hard one until the row is set. */
    private static String joinFractions(String text) {
        return text.replaceAll("(\\d) (\\d+\u2044\\d)", "$1\u00a0$2");
    }

    private void append(String word, double hang) {
        String longer = row.length() == 0 ? word : row + " " + word;
        if (row.length() > 0 && indent + Typesetter.width(opened(longer), lettering) > width) {
            finishRow();
            indent = hang;
            rowStartsBold = bold;
            longer = word;
        }
        row.setLength(0);
        row.append(longer);
        bold = bold ^ switches(word) % 2 == 1;
    }

    private void finishRow() {
        String text = opened(row.toString());
        rows.add(new Paragraph.Row(indent, Typesetter.line(closed(text), lettering)));
        row.setLength(0);
    }

    private String opened(String text) {
        return rowStartsBold ? Typesetter.boldSwitch() + text : text;
    }

    private static String closed(String text) {
        return switches(text) % 2 == 1 ? text + Typesetter.boldSwitch() : text;
    }

    private static int switches(String text) {
        int count = 0;
        for (int at = text.indexOf("**"); at >= 0; at = text.indexOf("**", at + 2)) {
            count++;
        }
        return count;
    }
}
