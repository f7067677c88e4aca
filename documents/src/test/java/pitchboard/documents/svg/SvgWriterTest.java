package pitchboard.documents.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import pitchboard.brief.Paper;
import pitchboard.documents.Specimen;
import pitchboard.measure.Length;
import pitchboard.sheet.Box;
import pitchboard.sheet.Face;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Run;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;

final class SvgWriterTest {
    private static final PartRef PART = PartRef.of("stringer-left");

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static Element written(Mark mark) throws Exception {
        Document document = parsed(new SvgWriter().write(new Sheet("one", "One", Paper.A4, List.of(mark))));
        return (Element) document.getDocumentElement().getLastChild();
    }

    private static List<Element> all(Document document, String name) {
        NodeList found = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void every_sheet_is_well_formed_and_its_millimetres_are_millimetres(Paper paper) throws Exception {
        for (Sheet sheet : Specimen.sheets(paper)) {
            Element svg = parsed(new SvgWriter(SvgFonts.embeddedFor(List.of(sheet))).write(sheet))
                    .getDocumentElement();
            assertThat(Double.parseDouble(svg.getAttribute("width").replace("mm", "")))
                    .isEqualTo(paper.widthMm());
            assertThat(Double.parseDouble(svg.getAttribute("height").replace("mm", "")))
                    .isEqualTo(paper.heightMm());
            String[] box = svg.getAttribute("viewBox").split(" ", -1);
            assertThat(Double.parseDouble(box[2])).isEqualTo(paper.widthMm());
            assertThat(Double.parseDouble(box[3])).isEqualTo(paper.heightMm());
        }
    }

    @Test
    void a_line_keeps_its_spots_pen_and_part() throws Exception {
        Element line = written(new Mark.Line(PART, List.of(Spot.of(1, 2), Spot.of(3.5, 4)), Pen.HEAD_RULE));
        assertThat(line.getTagName()).isEqualTo("polyline");
        assertThat(line.getAttribute("points")).isEqualTo("1,2 3.5,4");
        assertThat(line.getAttribute("class")).isEqualTo("pen-head-rule");
        assertThat(line.getAttribute("data-part")).isEqualTo("stringer-left");
    }

    @Test
    void a_shape_is_edged_and_filled_as_it_says() throws Exception {
        List<Spot> corners = new Box(1, 1, 2, 2).corners();
        assertThat(written(new Mark.Shape(PART, corners, Optional.of(Pen.CUT), Optional.of(Fill.LIGHT)))
                        .getAttribute("class"))
                .isEqualTo("pen-cut fill-light");
        assertThat(written(new Mark.Shape(PART, corners, Optional.empty(), Optional.of(Fill.BLACK)))
                        .getAttribute("class"))
                .isEqualTo("fill-black");
    }

    @Test
    void an_arc_goes_the_short_or_the_long_way_anticlockwise() throws Exception {
        Spot centre = Spot.of(50, 50);
        assertThat(written(new Mark.Arc(PART, centre, 10, 0, 90, Pen.THIN)).getAttribute("d"))
                .isEqualTo("M60 50A10 10 0 0 0 50 40");
        assertThat(written(new Mark.Arc(PART, centre, 10, 0, 270, Pen.THIN)).getAttribute("d"))
                .isEqualTo("M60 50A10 10 0 1 0 50 60");
        assertThat(written(new Mark.Arc(PART, centre, 10, 0, -90, Pen.THIN)).getAttribute("d"))
                .isEqualTo("M60 50A10 10 0 0 1 50 60");
    }

    @Test
    void text_stands_turned_at_its_baseline_run_by_run_and_escaped() throws Exception {
        Element text = written(new Mark.Text(
                PART,
                Spot.of(10, 20),
                90,
                List.of(new Run("a < b & \"c\" ", 0, 0, 3, Face.REGULAR, 12), new Run("3", 12, 1, 2, Face.BOLD, 1)),
                "a < b & \"c\" 3"));
        assertThat(text.getAttribute("transform")).isEqualTo("translate(10 20)rotate(-90)");
        assertThat(text.getTextContent()).isEqualTo("a < b & \"c\" 3");
        Element second = (Element) text.getLastChild();
        assertThat(List.of(
                        second.getAttribute("x"),
                        second.getAttribute("y"),
                        second.getAttribute("font-size"),
                        second.getAttribute("class"),
                        second.getAttribute("textLength")))
                .containsExactly("12", "-1", "2", "bold", "1");
    }

    @Test
    void a_dimension_is_a_group_that_says_what_it_says() throws Exception {
        Mark.Text label =
                new Mark.Text(PART, Spot.of(10, 20), 0, List.of(new Run("10″", 0, 0, 3, Face.REGULAR, 5)), "10″");
        Mark stroke = new Mark.Line(PART, List.of(Spot.of(0, 0), Spot.of(9, 0)), Pen.DIMENSION);
        Element group = written(
                new Mark.Dimension(PART, Spot.of(0, 0), Spot.of(9, 0), Length.inches(10), List.of(stroke), label));
        assertThat(group.getAttribute("class")).isEqualTo("dimension");
        assertThat(group.getAttribute("data-says")).isEqualTo("10″");
        assertThat(group.getElementsByTagName("polyline").getLength()).isEqualTo(1);
        assertThat(group.getTextContent()).isEqualTo("10″");
    }

    @Test
    void every_pen_and_tint_in_use_has_its_rule() throws Exception {
        for (Sheet sheet : Specimen.sheets(Paper.LETTER)) {
            Document document = parsed(new SvgWriter().write(sheet));
            String rules = all(document, "style").get(0).getTextContent();
            for (String element : List.of("polyline", "polygon", "circle", "path")) {
                for (Element drawn : all(document, element)) {
                    for (String name : drawn.getAttribute("class").split(" ", -1)) {
                        assertThat(rules).contains(".sheet ." + name + "{");
                    }
                }
            }
        }
    }

    @Test
    void the_same_sheet_gives_the_same_bytes() {
        String first = new SvgWriter().write(Specimen.sheets(Paper.A4).get(0));
        assertThat(new SvgWriter().write(Specimen.sheets(Paper.A4).get(0))).isEqualTo(first);
    }
}
