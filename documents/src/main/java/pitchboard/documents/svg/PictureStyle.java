package pitchboard.documents.svg;

import java.util.Map;
import pitchboard.documents.Decimals;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;

/** The pens, tints and letters of pictures as style rules, with the page's own colours. */
final class PictureStyle {
    static final String RULES = rules();

    /** Because a screen's lines are crisper than a printer's, and its drawings smaller. */
    private static final double FINER = 0.66;

    private static final double FINEST = 0.16;

    private PictureStyle() {}

    private static String rules() {
        StringBuilder rules = new StringBuilder();
        rules.append(".picture{font-family:'").append(SvgWriter.FONT_FAMILY);
        rules.append("',sans-serif;font-kerning:none;font-variant-ligatures:none;fill:none;stroke:none}\n");
        rules.append(".picture text{fill:").append(ink()).append(";white-space:pre}\n");
        rules.append(".picture .bold{font-weight:700}\n");
        for (Pen pen : Pen.values()) {
            pen(rules, pen);
        }
        Map<Fill, String> tints = Map.of(
                Fill.WHITE, "var(--picture-paper,Canvas)",
                Fill.LIGHT, "var(--picture-wood,rgba(170,120,60,.22))",
                Fill.SHADE, "var(--picture-shade,rgba(128,128,128,.3))",
                Fill.BLACK, ink());
        for (Fill fill : Fill.values()) {
            rule(rules, SvgStyle.name(fill), "fill:" + tints.get(fill));
        }
        rules.append(".picture .part .fill-white{fill:var(--picture-board,Canvas)}\n");
        rules.append(".picture .dimension[data-field] text{fill:")
                .append(size())
                .append("}\n");
        rules.append(".picture .dimension .fill-black{fill:").append(size()).append("}\n");
        rules.append(".picture .zone{pointer-events:all}\n");
        return rules.toString();
    }

    private static void pen(StringBuilder rules, Pen pen) {
        StringBuilder says = new StringBuilder("stroke:");
        says.append(
                switch (pen) {
                    case DIMENSION, TICK -> size();
                    case THIN, BREAK, HIDDEN, GHOST, CENTRE -> "var(--picture-faint,currentColor)";
                    default -> ink();
                });
        says.append(";stroke-width:");
        Decimals.write(says, Math.max(FINEST, pen.widthMm() * FINER));
        String before = ";stroke-dasharray:";
        for (double dash : pen.dashes()) {
            Decimals.write(says.append(before), dash * FINER);
            before = " ";
        }
        rule(rules, SvgStyle.name(pen), says.toString());
    }

    private static void rule(StringBuilder rules, String name, String says) {
        rules.append(".picture .").append(name).append('{').append(says).append("}\n");
    }

    private static String ink() {
        return "var(--picture-ink,currentColor)";
    }

    private static String size() {
        return "var(--picture-size,currentColor)";
    }
}
