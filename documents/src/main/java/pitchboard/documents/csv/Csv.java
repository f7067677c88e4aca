package pitchboard.documents.csv;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Comma-separated rows (RFC 4180) for spreadsheets: marked as UTF-8, quotes where needed, lines that end in carriage return
 * and line feed. Plain numbers and days written as 2027-05-14 stay what they are. Text that a spreadsheet would take for
 * something else is kept from it: a blank goes before what looks like a formula; a fraction gets the fraction stroke
 * U+2044; and before what looks like another number, a date or a time goes U+2060, which takes up no room.
 */
final class Csv {
    /** The first character of a file: without it some spreadsheets take UTF-8 for something older. */
    static final char MARK = '\ufeff';

    private static final char JOINER = '\u2060';
    private static final char STROKE = '\u2044';
    private static final String MONTH = "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,14})(\\.[0-9]+)?");
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern FRACTION = Pattern.compile("([0-9]+ )?[0-9]+/[0-9]+");
    private static final Pattern NUMERIC = Pattern.compile("[(.$\u20ac\u00a3]?[0-9][-0-9 .,/:%eE+)]*( ?[ap]m?)?");
    private static final Pattern DATE = Pattern.compile("([0-9]{1,4}[-. /]+)?" + MONTH + "([-. /,]+[0-9]{1,4}){0,2}");
    private static final Pattern WORD = Pattern.compile("true|false");

    private final StringBuilder out = new StringBuilder().append(MARK);

    Csv row(String... cells) {
        return row(List.of(cells));
    }

    Csv row(List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(quoted(kept(cells.get(i))));
        }
        out.append("\r\n");
        return this;
    }

    /** The cell as a spreadsheet shall show it. */
    static String kept(String text) {
        if (text.isEmpty()
                || NUMBER.matcher(text).matches()
                || DAY.matcher(text).matches()) {
            return text;
        }
        if ("=+-@".indexOf(text.charAt(0)) >= 0) {
            return " " + text;
        }
        if (FRACTION.matcher(text).matches()) {
            return text.replace('/', STROKE);
        }
        return isTakenForAnother(text) ? JOINER + text : text;
    }

    private static boolean isTakenForAnother(String text) {
        StringBuilder small = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            small.append(Character.toLowerCase(text.charAt(i)));
        }
        return NUMERIC.matcher(small).matches()
                || WORD.matcher(small).matches()
                || (DATE.matcher(small).matches() && text.chars().anyMatch(c -> c >= '0' && c <= '9'));
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    String text() {
        return out.toString();
    }
}
