package pitchboard.measure;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.TapeScanner.Token.Kind;

/** Cuts a tape text into numbers, strokes, dashes and units, whatever keyboard or book they came from. */
final class TapeScanner {
    private static final String SPACES =
            " \t\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a" + "\u202f\u205f\u3000";
    /** Hyphens, dashes and the minus sign. */
    private static final String DASHES = "-\u2010\u2011\u2012\u2013\u2014\u2212";
    /** Slash, fraction slash, division slash. */
    private static final String STROKES = "/\u2044\u2215";
    /** Apostrophe, single quotes, prime, modifier prime, acute: two of them make an inch mark. */
    private static final String FOOT_MARKS = "'\u2018\u2019\u2032\u02b9\u00b4";
    /** Quote, double quotes, double prime, modifier double prime. */
    private static final String INCH_MARKS = "\"\u201c\u201d\u2033\u02ba";

    private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅐⅑⅒↉";
    private static final List<String> VULGAR_PARTS = List.of(
            "1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3", "1/5", "2/5", "3/5", "4/5", "1/6", "5/6",
            "1/7", "1/9", "1/10", "0/3");

    private static final String KNOWN_SIGNS = SPACES + DASHES + STROKES + FOOT_MARKS + INCH_MARKS + VULGAR;

    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private TapeScanner(String text) {
        this.text = text;
    }

    /** The tokens in order, the last of kind {@link Kind#END}. */
    static List<Token> scan(String text) {
        TapeScanner scanner = new TapeScanner(text);
        while (scanner.at < text.length()) {
            scanner.scanOne();
        }
        scanner.add(Kind.END, text.length());
        return List.copyOf(scanner.tokens);
    }

    private void scanOne() {
        char c = text.charAt(at);
        if (SPACES.indexOf(c) >= 0) {
            at++;
        } else if (isNumberStart()) {
            add(Kind.NUMBER, endOfNumber());
        } else if (isLetter(c)) {
            addWord();
        } else if (VULGAR.indexOf(c) >= 0) {
            addVulgar(VULGAR_PARTS.get(VULGAR.indexOf(c)));
        } else if (FOOT_MARKS.indexOf(c) >= 0) {
            addFootMarks();
        } else {
            addSign(c);
        }
    }

    private void addSign(char c) {
        if (DASHES.indexOf(c) >= 0) {
            add(Kind.DASH, at + 1);
        } else if (STROKES.indexOf(c) >= 0) {
            add(Kind.STROKE, at + 1);
        } else if (INCH_MARKS.indexOf(c) >= 0) {
            add(Kind.INCH, at + 1);
        } else {
            add(Kind.OTHER, endOfOther());
        }
    }

    private void add(Kind kind, int end) {
        tokens.add(new Token(kind, text.substring(at, end), at, end));
        at = end;
    }

    /** Three tokens in the place of one character, so that the grammar knows one kind of fraction. */
    private void addVulgar(String parts) {
        int stroke = parts.indexOf('/');
        tokens.add(new Token(Kind.NUMBER, parts.substring(0, stroke), at, at + 1));
        tokens.add(new Token(Kind.STROKE, "/", at, at + 1));
        tokens.add(new Token(Kind.NUMBER, parts.substring(stroke + 1), at, at + 1));
        at++;
    }

    private void addFootMarks() {
        boolean two = at + 1 < text.length() && FOOT_MARKS.indexOf(text.charAt(at + 1)) >= 0;
        add(two ? Kind.INCH : Kind.FOOT, two ? at + 2 : at + 1);
    }

    private void addWord() {
        int end = at;
        while (end < text.length() && isLetter(text.charAt(end))) {
            end++;
        }
        Kind kind = kindOf(text.substring(at, end));
        boolean abbreviated = kind != Kind.OTHER && end < text.length() && text.charAt(end) == '.';
        add(kind, abbreviated ? end + 1 : end);
    }

    private static Kind kindOf(String word) {
        for (Kind kind : Kind.values()) {
            for (String name : kind.words()) {
                if (name.equalsIgnoreCase(word)) {
                    return kind;
                }
            }
        }
        return Kind.OTHER;
    }

    private boolean isNumberStart() {
        char c = text.charAt(at);
        boolean point = c == '.' || c == ',';
        return isDigit(c) || (point && at + 1 < text.length() && isDigit(text.charAt(at + 1)));
    }

    /** Takes in every point and comma, so that {@code 7..5} is one bad number and not two good ones. */
    private int endOfNumber() {
        int end = at;
        while (end < text.length() && (isDigit(text.charAt(end)) || ".,".indexOf(text.charAt(end)) >= 0)) {
            end++;
        }
        return end;
    }

    private int endOfOther() {
        int end = at + 1;
        while (end < text.length() && !isKnown(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isKnown(char c) {
        return isDigit(c) || isLetter(c) || KNOWN_SIGNS.indexOf(c) >= 0;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    /** One piece of the text, from {@code start} up to {@code end}, both counted from 0. */
    record Token(Kind kind, String text, int start, int end) {
        enum Kind {
            NUMBER,
            STROKE,
            DASH,
            FOOT("ft", "foot", "feet"),
            INCH("in", "inch", "inches"),
            MILLIMETRE("mm", "millimetre", "millimetres", "millimeter", "millimeters"),
            CENTIMETRE("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
            METRE("m", "metre", "metres", "meter", "meters"),
            OTHER,
            END;

            private final List<String> words;

            Kind(String... words) {
                this.words = List.of(words);
            }

            List<String> words() {
                return words;
            }

            boolean isUnit() {
                return !words.isEmpty();
            }

            boolean isMetric() {
                return compareTo(MILLIMETRE) >= 0 && compareTo(METRE) <= 0;
            }
        }
    }
}
