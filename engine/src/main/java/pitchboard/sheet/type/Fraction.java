package pitchboard.sheet.type;

import java.util.List;
import pitchboard.sheet.Face;
import pitchboard.sheet.Run;

/** How a fraction stands in a line: small figures either side of a slash, the first raised, the second lowered. */
final class Fraction {
    static final char SLASH = '\u2044';

    /** Size of the small figures against the line's. */
    private static final double SCALE = 0.68;
    /** How far the first figures are raised and the second lowered, in ems of the line. */
    private static final double RAISED = 0.285;

    private static final double LOWERED = -0.07;
    /** Clear space on either side of the slash, which leans over its own edges. */
    private static final double BESIDE_SLASH = 0.05;
    /** How far a fraction moves back into the space before it. */
    private static final double INTO_SPACE = 0.14;

    private Fraction() {}

    static int startBefore(String text, int slash, int from) {
        int start = slash;
        while (start > from && isFigure(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    static int endAfter(String text, int slash) {
        int end = slash + 1;
        while (end < text.length() && isFigure(text.charAt(end))) {
            end++;
        }
        return end;
    }

    static boolean isFigure(char letter) {
        return letter >= '0' && letter <= '9';
    }

    /** Adds the three runs and returns where the pen stands after them. */
    static double set(String above, String below, double pen, double em, Face face, List<Run> runs) {
        double small = em * SCALE;
        double at = pen - (followsWhole(runs) ? em * INTO_SPACE : 0);
        // Because small figures of the same weight would look pale beside the large ones.
        Face heavier = Face.BOLD;
        double aboveWidth = small * Alphabet.width(above, heavier);
        runs.add(new Run(above, at, em * RAISED, small, heavier, aboveWidth));
        double slashAt = at + aboveWidth + em * BESIDE_SLASH;
        double slashWidth = em * Alphabet.width(String.valueOf(SLASH), face);
        runs.add(new Run(String.valueOf(SLASH), slashAt, 0, em, face, slashWidth));
        double belowAt = slashAt + slashWidth + em * BESIDE_SLASH;
        double belowWidth = small * Alphabet.width(below, heavier);
        runs.add(new Run(below, belowAt, em * LOWERED, small, heavier, belowWidth));
        return belowAt + belowWidth + em * 0.02;
    }

    /** Whether a whole number and a space stand before, so that number and fraction read as one. */
    private static boolean followsWhole(List<Run> runs) {
        String before = runs.isEmpty() ? "" : runs.get(runs.size() - 1).letters();
        int space = before.length() - 1;
        return space > 0 && before.charAt(space) == ' ' && isFigure(before.charAt(space - 1));
    }
}
