package pitchboard.documents.svg;

import java.util.List;
import java.util.stream.Collectors;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Picture;

/**
 * Writes a picture as one SVG drawing for a page to show, as wide as the page likes. Groups become {@code g} elements
 * that say what they show. The drawing has neither style nor type of its own: the page puts {@link #STYLE} into its
 * style sheet once, and colours it.
 */
public final class PictureWriter {
    /** Rules for all pictures. Colours are custom properties of the page, and fall back on its own. */
    public static final String STYLE = PictureStyle.RULES;

    /** Rules for a picture so small that its sizes cannot be read: black on white, without them. */
    private static final String SMALL =
            STYLE + ".picture{color:#000;background:#fff}.picture .dimension,.picture text{display:none}";

    /** The picture in itself, to be shown small beside others. */
    public String writeSmall(Picture picture) {
        return write(picture, SMALL);
    }

    public String write(Picture picture) {
        return write(picture, "");
    }

    private static String write(Picture picture, String style) {
        Box page = picture.page();
        Xml xml = new Xml();
        xml.open("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("viewBox", page.left(), page.top(), page.width(), page.height())
                .attribute("class", "picture")
                .attribute("data-picture", picture.id())
                .attribute("role", "img")
                .attribute("aria-label", picture.title());
        if (!style.isEmpty()) {
            xml.element("style", style);
        }
        picture.groups().forEach(group -> write(xml, group));
        return xml.close().text();
    }

    private static void write(Xml xml, Picture.Group group) {
        xml.open("g");
        switch (group.kind()) {
            case PLAIN -> xml.attribute("class", "notes");
            case PART -> xml.attribute("class", "part").attribute("data-part", group.name());
            case SIZE -> size(xml, group);
            case MARK -> xml.attribute("class", "mark").attribute("data-mark", group.name());
        }
        SvgMarks marks = new SvgMarks(xml, SvgMarks.Parts.ON_GROUPS);
        for (Mark mark : group.marks()) {
            if (mark instanceof Mark.Dimension dimension) {
                marks.strokesAndLabel(dimension);
            } else {
                marks.write(mark);
            }
        }
        xml.close();
    }

    private static void size(Xml xml, Picture.Group group) {
        xml.attribute("class", "dimension");
        if (!group.name().isEmpty()) {
            xml.attribute("data-field", group.name());
        }
        xml.attribute("data-says", says(group.marks()));
    }

    private static String says(List<Mark> marks) {
        return marks.stream()
                .map(PictureWriter::says)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String says(Mark mark) {
        if (mark instanceof Mark.Dimension dimension) {
            return dimension.label().reads();
        }
        return mark instanceof Mark.Text text ? text.reads() : "";
    }
}
