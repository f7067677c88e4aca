package pitchboard.sheet.type;

import java.util.Arrays;
import java.util.Optional;
import pitchboard.sheet.Face;

/** The characters the type has, and how wide they are. All measures are parts of the em. */
public final class Alphabet {
    /** Height of capitals and figures above the baseline. */
    public static final double CAP_HEIGHT = 0.686;
    /** How far letters reach below the baseline. */
    public static final double DESCENT = 0.21;

    /** All characters of the type lie below this one. */
    private static final int END = 0x2800;

    private static final int UNKNOWN = -1;
    private static final int[] REGULAR = read(RegularWidths.TABLE);
    private static final int[] BOLD = read(BoldWidths.TABLE);

    private Alphabet() {}

    /** Widths by character, in thousandths of the em. */
    private static int[] read(String table) {
        int[] widths = new int[END];
        Arrays.fill(widths, UNKNOWN);
        for (String row : table.split("\n", -1)) {
            String[] cells = row.split(" ", -1);
            for (int i = 1; i < cells.length; i++) {
                if (!cells[i].equals("-")) {
                    widths[Integer.parseInt(cells[0], 16) + i - 1] = Integer.parseInt(cells[i]);
                }
            }
        }
        return widths;
    }

    private static int thousandths(char letter, Face face) {
        if (letter >= END) {
            return UNKNOWN;
        }
        return (face == Face.BOLD ? BOLD : REGULAR)[letter];
    }

    private static boolean has(char letter) {
        return thousandths(letter, Face.REGULAR) != UNKNOWN && thousandths(letter, Face.BOLD) != UNKNOWN;
    }

    /** The advance width of letters side by side. */
    static double width(String letters, Face face) {
        int thousandths = 0;
        for (int i = 0; i < letters.length(); i++) {
            int width = thousandths(letters.charAt(i), face);
            if (width == UNKNOWN) {
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
            if (letter != '\n' && !has(letter)) {
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
            kept.append(has(letter) ? letter : Character.isWhitespace(letter) ? ' ' : '?');
        }
        return kept.toString();
    }
}
