package pitchboard.sheet.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.inspection.SheetInspection;

final class FrameTest {
    private static final String LONG =
            "An extraordinarily long name that nobody would give a stair, but somebody will ";

    private static Frame frame(Paper paper, String job) {
        return new Frame(
                paper,
                new TitleBlock(
                        new Title(job, "The sailing club", "North jetty", "2026-05-12"),
                        "IRC 2021",
                        "7c1e 90b4",
                        "Local code decides."));
    }

    private static List<String> texts(Sheet sheet) {
        return sheet.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).reads())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void every_sheet_says_job_date_rules_number_scale_and_inputs(Paper paper) {
        Frame frame = frame(paper, "Boathouse");
        List<Sheet> sheets = frame.bind(
                List.of(frame.draft("elevation", "Elevation").scaled(Scale.oneTo(10)), frame.draft("rules", "Rules")));
        assertThat(texts(sheets.get(0)))
                .contains("Boathouse", "The sailing club · North jetty", "Elevation", "2026-05-12", "IRC 2021")
                .contains("7c1e 90b4", "Local code decides.", "1 of 2", "1:10");
        assertThat(texts(sheets.get(1))).contains("2 of 2", "not to scale", "Rules");
        assertThat(sheets).extracting(Sheet::id).containsExactly("elevation", "rules");
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void names_of_any_length_and_letters_of_any_script_stay_in_their_place(Paper paper) {
        Frame frame = frame(paper, LONG.repeat(4) + "船屋");
        Sheet sheet = frame.bind(List.of(frame.draft("rules", LONG.repeat(3)))).get(0);
        assertThat(SheetInspection.complaints(sheet)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void the_room_lies_inside_the_page_clear_of_the_title_block(Paper paper) {
        Sheet sheet = frame(paper, "Boathouse")
                .bind(List.of(frame(paper, "").draft("a", "A")))
                .get(0);
        assertThat(sheet.page().inset(10).contains(frame(paper, "").room())).isTrue();
        assertThat(frame(paper, "").room().bottom()).isLessThan(paper.heightMm() - 8 - 16);
    }
}
