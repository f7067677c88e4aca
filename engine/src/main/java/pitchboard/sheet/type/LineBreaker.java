package pitchboard.sheet.type;

import java.util.ArrayList;
import java.util.List;

/** Breaks one line of running text into rows that fit a width. A word that is wider than the width stands alone. */
final class LineBreaker {
    private static final String BULLET = "• ";
    private static final char HARD_SPACE = '\u00a0';

    private final Lettering lettering;
    private final double width;
    private final double spaceWidth;
    private final List<Paragraph.Row> rows = new ArrayList<>();
    private final StringBuilder row = new StringBuilder();
    private boolean rowStartsBold;
    private boolean bold;
    private double indent;
    private double rowWidth;
    private boolean rowIsEmpty = true;

    LineBreaker(Lettering lettering, double width) {
        this.lettering = lettering;
        this.width = width;
        this.spaceWidth = Typesetter.width(" ", lettering);
    }

    boolean endsBold() {
        return bold;
    }

    List<Paragraph.Row> rows(String text, boolean startsBold) {
        bold = startsBold;
        rowStartsBold = startsBold;
        double hang = text.startsWith(BULLET) ? Typesetter.width(BULLET, lettering.regular()) : 0;
        String held = held(text);
        int from = 0;
        for (int space = held.indexOf(' '); space >= 0; space = held.indexOf(' ', from)) {
            append(held.substring(from, space), hang);
            from = space + 1;
        }
        append(held.substring(from), hang);
        finishRow();
        return rows;
    }

    /** Because "9 3/4" must not be torn apart at its space, nor a bullet from its word: such spaces are held hard. */
    private static String held(String text) {
        StringBuilder held = new StringBuilder(text);
        if (text.startsWith(BULLET)) {
            held.setCharAt(BULLET.length() - 1, HARD_SPACE);
        }
        for (int slash = text.indexOf(Fraction.SLASH); slash >= 0; slash = text.indexOf(Fraction.SLASH, slash + 1)) {
            int space = Fraction.startBefore(text, slash, 0) - 1;
            if (space > 0 && text.charAt(space) == ' ' && Fraction.isFigure(text.charAt(space - 1))) {
                held.setCharAt(space, HARD_SPACE);
            }
        }
        return held.toString();
    }

    private void append(String held, double hang) {
        String word = held.replace(HARD_SPACE, ' ');
        double wordWidth = Typesetter.width(bold ? Typesetter.boldSwitch() + word : word, lettering);
        double space = rowIsEmpty ? 0 : spaceWidth;
        if (!rowIsEmpty && indent + rowWidth + space + wordWidth > width) {
            finishRow();
            indent = hang;
            rowStartsBold = bold;
            space = 0;
        }
        row.append(rowIsEmpty ? "" : " ").append(word);
        rowIsEmpty = false;
        rowWidth += space + wordWidth;
        bold = bold ^ switches(word) % 2 == 1;
    }

    private void finishRow() {
        String text = opened(row.toString());
        rows.add(new Paragraph.Row(indent, closed(text), lettering));
        row.setLength(0);
        rowWidth = 0;
        rowIsEmpty = true;
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
