package pitchboard.documents.svg;

import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import pitchboard.documents.fonts.FontFile;
import pitchboard.documents.fonts.SlimFont;
import pitchboard.sheet.Face;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Run;
import pitchboard.sheet.Sheet;

/** Font rules that carry the type inside a drawing, for files that travel alone. */
public final class SvgFonts {
    private SvgFonts() {}

    /** Rules with only the letters that the sheets use; the same rules serve them all. */
    public static String embeddedFor(List<Sheet> sheets) {
        StringBuilder rules = new StringBuilder();
        for (Face face : Face.values()) {
            Set<Integer> letters = letters(sheets, face);
            if (!letters.isEmpty()) {
                rules.append("@font-face{font-family:'")
                        .append(SvgWriter.FONT_FAMILY)
                        .append("';font-weight:");
                rules.append(face == Face.BOLD ? 700 : 400).append(";src:url(data:font/ttf;base64,");
                rules.append(Base64.getEncoder().encodeToString(SlimFont.of(FontFile.of(face), letters)))
                        .append(")}");
            }
        }
        return rules.toString();
    }

    private static Set<Integer> letters(List<Sheet> sheets, Face face) {
        Set<Integer> letters = new TreeSet<>();
        sheets.stream()
                .flatMap(sheet -> sheet.marks().stream())
                .flatMap(SvgFonts::runs)
                .filter(run -> run.face() == face)
                .forEach(run -> run.letters().codePoints().forEach(letters::add));
        return letters;
    }

    private static Stream<Run> runs(Mark mark) {
        if (mark instanceof Mark.Dimension dimension) {
            return dimension.label().runs().stream();
        }
        return mark instanceof Mark.Text text ? text.runs().stream() : Stream.empty();
    }
}
