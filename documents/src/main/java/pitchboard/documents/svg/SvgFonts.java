package pitchboard.documents.svg;

import java.util.Base64;
import pitchboard.documents.fonts.FontFile;
import pitchboard.sheet.Face;

/** Font rules that carry the type inside the drawing, for files that travel alone. */
public final class SvgFonts {
    private SvgFonts() {}

    /** Both faces whole. */
    public static String embedded() {
        StringBuilder rules = new StringBuilder();
        for (Face face : Face.values()) {
            rules.append("@font-face{font-family:'")
                    .append(SvgWriter.FONT_FAMILY)
                    .append("';font-weight:");
            rules.append(face == Face.BOLD ? 700 : 400).append(";src:url(data:font/ttf;base64,");
            rules.append(Base64.getEncoder().encodeToString(FontFile.of(face).bytes()))
                    .append(")}");
        }
        return rules.toString();
    }
}
