package pitchboard.documents.svg;

import java.util.Locale;
import pitchboard.documents.Decimals;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;

/** The pens, tints and letters as style rules. */
final class SvgStyle {
    static final String RULES = rules();

    private SvgStyle() {}

    private static String rules() {
        StringBuilder rules = new StringBuilder();
        rules.append(".sheet{font-family:'").append(SvgWriter.FONT_FAMILY);
        rules.append("',sans-serif;font-kerning:none;font-variant-ligatures:none;fill:none;stroke:none}");
        rules.append(".sheet line,.sheet polyline,.sheet polygon,.sheet path,.sheet circle");
        rules.append("{stroke-linecap:butt;stroke-linejoin:miter}");
        rules.append(".sheet text{fill:#000;white-space:pre}.sheet .bold{font-weight:700}.sheet .paper{fill:#fff}");
        for (Pen pen : Pen.values()) {
            pen(rules, pen);
        }
        for (Fill fill : Fill.values()) {
            rules.append(".sheet .")
                    .append(name(fill))
                    .append("{fill:")
                    .append(grey(fill))
                    .append('}');
        }
        return rules.toString();
    }

    private static void pen(StringBuilder rules, Pen pen) {
        rules.append(".sheet .").append(name(pen)).append("{stroke:#000;stroke-width:");
        Decimals.write(rules, pen.widthMm());
        String before = ";stroke-dasharray:";
        for (double dash : pen.dashes()) {
            Decimals.write(rules.append(before), dash);
            before = " ";
        }
        rules.append('}');
    }

    /** The class of a pen or tint: {@code pen-outline}, {@code fill-light}. */
    static String name(Pen pen) {
        return "pen-" + pen.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String name(Fill fill) {
        return "fill-" + fill.name().toLowerCase(Locale.ROOT);
    }

    private static String grey(Fill fill) {
        int level = (int) Math.rint(255 * fill.brightness());
        return "rgb(" + level + "," + level + "," + level + ")";
    }
}
