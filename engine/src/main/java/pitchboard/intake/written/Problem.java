package pitchboard.intake.written;

/**
 * One thing in a text that could not be understood.
 *
 * @param at where to look
 * @param field the keys that lead there, outermost first: {@code wanted > treads > width}; empty for the text itself
 * @param read what stands there; empty when something is missing
 * @param expected what would be right, in plain words that follow "expected"
 */
public record Problem(Spot at, String field, String read, String expected) {
    /** Longer texts are shown shortened. */
    private static final int SHOWN = 60;

    public int line() {
        return at.line();
    }

    public int column() {
        return at.column();
    }

    /** Place, trouble and remedy: {@code line 14, column 12: wanted > width: found `40 ft`, expected ...}. */
    public String sentence() {
        String place = at.line() == 0 ? "" : "line " + at.line() + ", column " + at.column() + ": ";
        String name = field.isEmpty() ? "" : field + ": ";
        return place + name + (read.isEmpty() ? "" : "found " + quoted(shortened(read)) + ", ") + "expected "
                + expected;
    }

    /** A piece of text as messages show it, marked off from their own words. */
    public static String quoted(String text) {
        StringBuilder shown = new StringBuilder("`");
        for (int i = 0; i < text.length(); i++) {
            shown.append(text.charAt(i) < ' ' ? ' ' : text.charAt(i));
        }
        return shown.append('`').toString();
    }

    private static String shortened(String text) {
        return text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
    }
}
