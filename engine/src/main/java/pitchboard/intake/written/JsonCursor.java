package pitchboard.intake.written;

/** A place in a JSON text that only moves forward; knows its line, and what strings and numbers look like. */
final class JsonCursor {
    /** What {@link #peek} gives at the end: no JSON text has this character. */
    private static final char END = '\uffff';

    private final String text;
    private int at;
    private int line = 1;
    private int lineStart;

    JsonCursor(String text) {
        this.text = text;
    }

    boolean isAtEnd() {
        return at >= text.length();
    }

    char peek() {
        return isAtEnd() ? END : text.charAt(at);
    }

    char next() {
        char c = peek();
        at++;
        if (c == '\n') {
            line++;
            lineStart = at;
        }
        return c;
    }

    /** Steps over the next character when it is this one, and says whether it was. */
    boolean skip(char expected) {
        boolean there = !isAtEnd() && peek() == expected;
        if (there) {
            next();
        }
        return there;
    }

    void skipBlanks() {
        while (peek() == ' ' || peek() == '\t' || peek() == '\n' || peek() == '\r') {
            next();
        }
    }

    Spot spot() {
        return new Spot(line, at - lineStart + 1);
    }

    Unreadable refuse(String expected) {
        String found = isAtEnd() ? "" : String.valueOf(peek());
        return new Unreadable(new Problem(spot(), "", found, isAtEnd() ? expected + ", but the text ends" : expected));
    }

    /** A string, standing at its opening quote. */
    String string() {
        StringBuilder value = new StringBuilder();
        next();
        while (!skip('"')) {
            if (isAtEnd() || peek() < ' ') {
                throw refuse("a double quote to close the text (line breaks inside are written \\n)");
            }
            if (peek() == '\\') {
                value.append(escaped());
            } else {
                value.append(next());
            }
        }
        if (hasHalfAPair(value)) {
            throw refuse("whole characters in the text before: \\ud83d needs its second half");
        }
        return value.toString();
    }

    private char escaped() {
        next();
        int which = "\"\\/bfnrt".indexOf(peek());
        if (which >= 0) {
            next();
            return "\"\\/\b\f\n\r\t".charAt(which);
        }
        if (!skip('u')) {
            throw refuse("one of \" \\ / b f n r t u after a backslash");
        }
        int code = 0;
        for (int i = 0; i < 4; i++) {
            code = 16 * code + hexDigit();
        }
        return (char) code;
    }

    private int hexDigit() {
        int digit = "0123456789abcdef0123456789ABCDEF".indexOf(peek());
        if (digit < 0) {
            throw refuse("four hexadecimal digits after \\u");
        }
        next();
        return digit % 16;
    }

    private static boolean hasHalfAPair(CharSequence value) {
        int i = 0;
        while (i < value.length()) {
            boolean half = Character.isSurrogate(value.charAt(i));
            boolean pair =
                    half && i + 1 < value.length() && Character.isSurrogatePair(value.charAt(i), value.charAt(i + 1));
            if (half && !pair) {
                return true;
            }
            i += pair ? 2 : 1;
        }
        return false;
    }

    /** A number, {@code true} or {@code false}, as typed. */
    String literal() {
        int end = at;
        while (end < text.length() && isOfAWord(text.charAt(end))) {
            end++;
        }
        String word = text.substring(at, end);
        if (word.equals("null")) {
            throw refuse("a value: leave the whole line out where there is none");
        }
        if (!word.equals("true") && !word.equals("false") && !isNumber(word)) {
            throw refuse(word.isEmpty() ? "a value" : "a number, or text in double quotes");
        }
        at = end;
        return word;
    }

    private static boolean isOfAWord(char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || "+-.".indexOf(c) >= 0;
    }

    /** RFC 8259, section 6: no plus before, no zero before other digits, digits on both sides of the point. */
    private static boolean isNumber(String word) {
        int start = word.startsWith("-") ? 1 : 0;
        int whole = afterDigits(word, start);
        boolean zeroFirst = whole - start > 1 && word.charAt(start) == '0';
        int fraction = word.startsWith(".", whole) ? afterDigits(word, whole + 1) : whole;
        boolean emptyFraction = fraction == whole + 1;
        return whole > start && !zeroFirst && !emptyFraction && isExponent(word, fraction);
    }

    private static boolean isExponent(String word, int from) {
        if (from == word.length()) {
            return true;
        }
        boolean signed = from + 1 < word.length() && "+-".indexOf(word.charAt(from + 1)) >= 0;
        int digits = from + (signed ? 2 : 1);
        boolean marked = word.charAt(from) == 'e' || word.charAt(from) == 'E';
        return marked && digits < word.length() && afterDigits(word, digits) == word.length();
    }

    private static int afterDigits(String word, int from) {
        int end = from;
        while (end < word.length() && word.charAt(end) >= '0' && word.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    /** Carries a refusal out of the grammar; never leaves {@link JsonReader}. */
    static final class Unreadable extends RuntimeException {
        private final transient Problem problem;

        private Unreadable(Problem problem) {
            super(problem.sentence(), null, false, false);
            this.problem = problem;
        }

        Problem problem() {
            return problem;
        }
    }
}
