package pitchboard.documents.svg;

import java.util.Optional;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;

/**
 * Writes a sheet as one SVG drawing. Pens are classes named as in {@link Pen}, marks carry their part as
 * {@code data-part}, dimensions are groups of class {@code dimension}, zones are empty rectangles of class
 * {@code zone}.
 */
public final class SvgWriter {
    /** The family all sheets are set in; the page that shows a drawing must know it by this name. */
    public static final String FONT_FAMILY = "Archivo Narrow";

    /** Rules for all sheets, for a page that shows drawings of {@link #forPage}. */
    public static final String STYLE = SvgStyle.RULES;

    private final Optional<String> style;

    /** Drawings that rely on the reader's page or machine for the type; without it letters keep their widths. */
    public SvgWriter() {
        this("");
    }

    private SvgWriter(Optional<String> style) {
        this.style = style;
    }

    /** Drawings without type and style: the page that shows them has both, {@link #STYLE} in a style sheet of its own. */
    public static SvgWriter forPage() {
        return new SvgWriter(Optional.empty());
    }

    /**
     * Drawings that carry their own font rules.
     *
     * @param fontRules {@code @font-face} rules to be put into every drawing, such as {@link SvgFonts} makes
     */
    public SvgWriter(String fontRules) {
        this(Optional.of(fontRules + SvgStyle.RULES));
    }

    public String write(Sheet sheet) {
        Xml xml = new Xml();
        double width = sheet.paper().widthMm();
        double height = sheet.paper().heightMm();
        xml.open("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("width", width, "mm")
                .attribute("height", height, "mm")
                .attribute("viewBox", 0, 0, width, height)
                .attribute("id", sheet.id())
                .attribute("class", "sheet");
        xml.element("title", sheet.title());
        style.ifPresent(rules -> xml.element("style", rules));
        xml.open("rect")
                .attribute("class", "paper")
                .attribute("width", width)
                .attribute("height", height)
                .close();
        SvgMarks marks = new SvgMarks(xml, SvgMarks.Parts.ON_EVERY_MARK);
        for (Mark mark : sheet.marks()) {
            marks.write(mark);
        }
        return xml.close().text();
    }
}
