package pitchboard.sheet.type;

import pitchboard.sheet.Mark;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Run;

/** The rectangle a settled text covers: from its lowest descender to its highest capital. */
public final class TextBox {
    private TextBox() {}

    /** The rectangle of all runs together, turned with the text. */
    public static Quad of(Mark.Text text) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (Run run : text.runs()) {
            left = Math.min(left, run.across());
            right = Math.max(right, run.across() + run.width());
            bottom = Math.min(bottom, run.up() - depth(run) * run.em());
            top = Math.max(top, run.up() + Alphabet.CAP_HEIGHT * run.em());
        }
        return Quad.turned(text.at(), text.turn(), left, bottom, right, top);
    }

    /** Because figures and capitals keep above the baseline, and rows of a table stand close. */
    private static double depth(Run run) {
        return hasDescender(run.letters()) ? Alphabet.DESCENT : 0.02;
    }

    private static boolean hasDescender(String letters) {
        for (int i = 0; i < letters.length(); i++) {
            if ("gjpqyQ,;()[]{}|/⁄ç§".indexOf(letters.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }
}
