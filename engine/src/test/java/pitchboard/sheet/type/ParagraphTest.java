package pitchboard.sheet.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.sheet.Face;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Run;
import pitchboard.sheet.Spot;

final class ParagraphTest {
    private static final Lettering TEN = new Lettering(10, Face.REGULAR);

    private static List<String> reads(Paragraph paragraph) {
        return paragraph.rows().stream().map(row -> row.line().reads()).toList();
    }

    @Test
    void text_breaks_at_the_last_space_that_fits() {
        assertThat(reads(Typesetter.paragraph("0000 0000 0000", TEN, 40))).containsExactly("0000 0000", "0000");
    }

    @Test
    void a_fraction_stays_with_its_whole_number() {
        double width = Typesetter.width("cut at 7", TEN) + 1;
        assertThat(reads(Typesetter.paragraph("cut at 7 11⁄16", TEN, width))).containsExactly("cut at", "7 11⁄16");
    }

    @Test
    void a_word_wider_than_the_column_stands_alone() {
        assertThat(reads(Typesetter.paragraph("a 000000000000 b", TEN, 20))).containsExactly("a", "000000000000", "b");
    }

    @Test
    void bold_goes_on_over_a_line_break() {
        Paragraph paragraph = Typesetter.paragraph("a **bold bold** b", TEN, Typesetter.width("a bold ", TEN.bold()));
        assertThat(reads(paragraph)).containsExactly("a bold", "bold b");
        assertThat(paragraph.rows().get(1).line().runs().stream().map(Run::face))
                .containsExactly(Face.BOLD, Face.REGULAR);
    }

    @Test
    void lines_of_a_bulleted_text_hang_behind_the_bullet() {
        Paragraph paragraph = Typesetter.paragraph("• one two\n• three", TEN, Typesetter.width("• one", TEN) + 1);
        assertThat(reads(paragraph)).containsExactly("• one", "two", "• three");
        assertThat(paragraph.rows().stream().map(Paragraph.Row::indent))
                .containsExactly(0.0, Typesetter.width("• ", TEN), 0.0);
    }

    @Test
    void a_paragraph_is_as_tall_as_from_its_first_capitals_to_its_last_baseline() {
        Paragraph paragraph = Typesetter.paragraph("one\ntwo\nthree", TEN, 100);
        assertThat(paragraph.height()).isEqualTo(6.86 + 2 * 13.2, within(1e-9));
        List<Mark.Text> texts = paragraph.below(PartRef.NONE, Spot.of(5, 5), Align.LEFT);
        assertThat(texts.get(0).at()).isEqualTo(Spot.of(5, 11.86));
        assertThat(texts.get(2).at()).isEqualTo(Spot.of(5, 11.86 + 2 * 13.2));
    }

    @Test
    void an_empty_line_keeps_its_height_and_puts_down_no_text() {
        Paragraph paragraph = Typesetter.paragraph("one\n\nthree", TEN, 100);
        assertThat(paragraph.rows()).hasSize(3);
        assertThat(paragraph.below(PartRef.NONE, Spot.of(0, 0), Align.LEFT)).hasSize(2);
    }
}
