package pitchboard.sheet.tiling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

final class TilesTest {
    private static final PartRef PART = PartRef.of("pitch-board");

    private static Frame frame(Paper paper) {
        return new Frame(paper, new TitleBlock(new Title("Boathouse", "", "", ""), "", "", ""));
    }

    private static Stream<Mark.Line> lines(Draft draft, Pen pen) {
        return draft.marks().stream()
                .filter(mark -> mark instanceof Mark.Line line && line.pen() == pen)
                .map(Mark.Line.class::cast);
    }

    private static double length(Mark.Line line) {
        return line.spots().get(0).distanceTo(line.spots().get(1));
    }

    private static List<String> texts(Draft draft) {
        return draft.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).reads())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void a_drawing_that_fits_the_pane_is_one_page_with_a_ruler_and_no_match_marks(Paper paper) {
        Draft canvas = Tiles.canvas("foot", "Foot");
        Box pane = Tiles.pane(frame(paper));
        canvas.pencil(PART).box(Pen.OUTLINE, new Box(-700, 400, pane.width(), pane.height()));
        List<Draft> pages = Tiles.over(frame(paper), canvas);
        assertThat(pages).hasSize(1);
        assertThat(pages.get(0).id()).isEqualTo("foot");
        assertThat(texts(pages.get(0))).contains("100 mm").noneMatch(text -> text.matches("[A-Z][A-Z][12]"));
    }

    @Test
    void a_line_over_several_pages_is_shown_whole_and_the_overlaps_twice() {
        Draft canvas = Tiles.canvas("long", "Long");
        canvas.pencil(PART).line(Pen.CUT, Spot.of(0, 0), Spot.of(600, 0));
        List<Draft> pages = Tiles.over(frame(Paper.LETTER), canvas);
        assertThat(pages).hasSize(3);
        double shown = pages.stream()
                .flatMap(page -> lines(page, Pen.CUT))
                .mapToDouble(TilesTest::length)
                .sum();
        assertThat(shown).isEqualTo(600 + 2 * Tiles.OVERLAP, within(1e-3));
    }

    @Test
    void neighbours_show_match_marks_of_one_name_at_one_place_of_the_drawing() {
        Draft canvas = Tiles.canvas("long", "Long");
        // A stroke at every 10 mm, so that the place on the drawing can be read off each page.
        for (int x = 0; x <= 400; x += 10) {
            canvas.pencil(PART).line(Pen.CUT, Spot.of(x, 0), Spot.of(x, 1 + x / 10.0));
        }
        List<Draft> pages = Tiles.over(frame(Paper.LETTER), canvas);
        assertThat(pages).hasSize(2);
        List<Double> places = new ArrayList<>();
        for (Draft page : pages) {
            Mark.Disc match = page.marks().stream()
                    .filter(mark -> mark instanceof Mark.Disc)
                    .map(Mark.Disc.class::cast)
                    .findFirst()
                    .orElseThrow();
            Mark.Line stroke = lines(page, Pen.CUT).findFirst().orElseThrow();
            double strokeX = Math.rint((length(stroke) - 1) * 10);
            places.add(match.centre().x() - stroke.spots().get(0).x() + strokeX);
            assertThat(texts(page)).contains("AB1", "AB2");
        }
        assertThat(places.get(0)).isEqualTo(places.get(1), within(1e-3));
    }

    @Test
    void a_triangle_needs_no_page_for_its_empty_corner() {
        Draft canvas = Tiles.canvas("pitch-board", "Pitch board");
        canvas.pencil(PART).outline(Pen.OUTLINE, List.of(Spot.of(0, 0), Spot.of(270, 0), Spot.of(0, 200)));
        assertThat(Tiles.pagesFor(frame(Paper.LETTER), 270, 200)).isEqualTo(4);
        assertThat(Tiles.over(frame(Paper.LETTER), canvas)).hasSize(3);
    }

    @Test
    void every_text_is_shown_whole_on_some_page() {
        Draft canvas = Tiles.canvas("words", "Words");
        canvas.pencil(PART).box(Pen.OUTLINE, new Box(0, 0, 500, 300));
        List<String> words = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            String word = "a long word " + i;
            words.add(word);
            canvas.pencil(PART).text(Spot.of(i * 11.9, 10 + i * 7.1), word, Lettering.DIMENSION, Align.LEFT);
        }
        List<Draft> pages = Tiles.over(frame(Paper.A4), canvas);
        assertThat(pages.stream().flatMap(page -> texts(page).stream()).distinct())
                .containsAll(words);
    }
}
