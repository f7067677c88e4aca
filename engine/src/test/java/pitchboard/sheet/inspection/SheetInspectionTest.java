package pitchboard.sheet.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

final class SheetInspectionTest {
    private final Frame frame = new Frame(
            Paper.A4,
            new TitleBlock(
                    new Title("Boathouse", "The club", "North jetty", "May"), "IRC 2021", "7c1e 90b4", "Measure."));
    private final Draft draft = frame.draft("plan", "Plan");

    private void word(double x, double y, double turn) {
        draft.pencil().text(Spot.of(x, y), turn, "stringer", Lettering.NOTE, Align.LEFT);
    }

    private Sheet sheet() {
        return frame.bind(List.of(draft)).get(0);
    }

    @Test
    void an_empty_frame_is_in_order() {
        assertThat(SheetInspection.complaints(sheet())).isEmpty();
        assertThat(SheetInspection.crossedTexts(sheet())).isEmpty();
    }

    @Test
    void texts_on_each_other_are_found() {
        word(50, 50, 0);
        word(55, 51, 0);
        assertThat(SheetInspection.complaints(sheet()))
                .containsExactly("plan: \"stringer\" at 50.0, 50.0 overlaps plan: \"stringer\" at 55.0, 51.0");
    }

    @Test
    void a_turned_text_is_judged_by_its_turned_place() {
        word(50, 50, 0);
        word(49, 60, 45);
        assertThat(SheetInspection.complaints(sheet())).isEmpty();
        word(49, 55, 45);
        assertThat(SheetInspection.complaints(sheet())).hasSize(1);
    }

    @Test
    void a_text_over_the_border_is_found() {
        word(285, 50, 0);
        assertThat(SheetInspection.complaints(sheet()))
                .containsExactly("plan: \"stringer\" at 285.0, 50.0 leaves the border");
    }

    @Test
    void a_text_in_the_title_block_is_found() {
        word(12, 190, 0);
        assertThat(SheetInspection.complaints(sheet())).isNotEmpty();
    }

    @Test
    void a_line_through_a_text_is_found_when_its_pen_counts() {
        word(50, 50, 0);
        draft.pencil().line(Pen.THIN, Spot.of(40, 49), Spot.of(80, 49));
        assertThat(SheetInspection.crossedTexts(sheet())).isEmpty();
        draft.pencil().line(Pen.OUTLINE, Spot.of(40, 49), Spot.of(80, 49));
        assertThat(SheetInspection.crossedTexts(sheet()))
                .containsExactly("plan: \"stringer\" at 50.0, 50.0 is crossed by a line");
    }
}
