package pitchboard.sheet.type;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Spot;

/** Lines of set text under each other, not yet at a place. */
public record Paragraph(List<Row> rows, Lettering lettering) {
    /**
     * One line, in letters still to be set: many a paragraph is only measured.
     *
     * @param indent millimetres from the paragraph's left edge
     */
    public record Row(double indent, String text, Lettering lettering) {
        public TypeLine line() {
            return Typesetter.line(text, lettering);
        }

        double width() {
            return Typesetter.width(text, lettering);
        }
    }

    public Paragraph {
        rows = List.copyOf(rows);
    }

    /** Width of the longest line in millimetres. */
    public double width() {
        return rows.stream()
                .mapToDouble(row -> row.indent() + row.width())
                .max()
                .orElse(0);
    }

    /** From the top of the first line's capitals to the last baseline, in millimetres. */
    public double height() {
        return rows.isEmpty() ? 0 : lettering.capHeight() + (rows.size() - 1) * lettering.lineHeight();
    }

    /** Puts the lines on the paper, the first line's capitals touching the given top; each line aligned to the spot. */
    public List<Mark.Text> below(PartRef of, Spot top, Align align) {
        List<Mark.Text> texts = new ArrayList<>();
        double baseline = top.y() + lettering.capHeight();
        for (Row row : rows) {
            TypeLine line = row.line();
            if (!line.runs().isEmpty()) {
                texts.add(line.at(of, Spot.of(top.x() + row.indent(), baseline), 0, align));
            }
            baseline += lettering.lineHeight();
        }
        return texts;
    }
}
