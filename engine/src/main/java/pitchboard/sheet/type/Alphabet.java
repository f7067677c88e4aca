package pitchboard.sheet.type;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import pitchboard.sheet.Face;

/** The characters the type has, and how wide they are. All measures are parts of the em. */
public final class Alphabet {
    /** Height of capitals and figures above the baseline. */
    public static final double CAP_HEIGHT = 0.686;
    /** How far letters reach below the baseline. */
    public static final double DESCENT = 0.21;

    private static final Map<Character, Integer> REGULAR = read(RegularWidths.TABLE);
    private static final Map<Character, Integer> BOLD = read(BoldWidths.TABLE);

    private Alphabet() {}

    private static Map<Character, Integer> read(String table) {
        Map<Character, Integer> widths = new HashMap<>();
        for (String row : table.trim().split("\n", -1)) {
            String[] cells = row.split(" ", -1);
            int first = Integer.parseInt(cells[0], 16);
            for (int i = 1; i < cells.length; i++) {
                if (!cells[i].equals("-")) {
                    widths.put((char) (first + i - 1), Integer.valueOf(cells[i]));
                }
            }
        }
        return widths;
    }

    private static Map<Character, Integer> of(Face face) {
        return face == Face.BOLD ? BOLD : REGULAR;
    }

    /** The advance width of letters side by side. */
    static double width(String letters, Face face) {
        Map<Character, Integer> widths = of(face);
        int thousandths = 0;
        for (int i = 0; i < letters.length(); i++) {
            Integer width = widths.get(letters.charAt(i));
            if (width == null) {
                throw new IllegalArgumentException("the type has no character '" + letters.charAt(i) + "' (U+"
                        + Integer.toHexString(letters.charAt(i)) + ") for \"" + letters + "\"");
            }
            thousandths += width;
        }
        return thousandths / 1000.0;
    }

    /** The first character of the text that cannot be printed. */
    public static Optional<Character> findUnknown(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter != '\n' && !(REGULAR.containsKey(letter) && BOLD.containsKey(letter))) {
                return Optional.of(letter);
            }
        }
        return Optional.empty();
    }

    /** Text somebody typed, with a question mark for every character that cannot be printed. */
    public static String printable(String typed) {
        StringBuilder kept = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            char letter = typed.charAt(i);
            boolean known = REGULAR.containsKey(letter) && BOLD.containsKey(letter);
            kept.append(known ? letter : Character.isWhitespace(letter) ? ' ' : '?');
        }
        return kept.toString();
    }
}
