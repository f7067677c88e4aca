package pitchboard.sheet.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.sheet.Face;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Run;
import pitchboard.sheet.Spot;

final class TypesetterTest {
    private static final Lettering TEN = new Lettering(10, Face.REGULAR);

    private static List<String> letters(TypeLine line) {
        return line.runs().stream().map(Run::letters).toList();
    }

    @Test
    void a_plain_line_is_as_wide_as_its_letters() {
        // Archivo Narrow Regular: figures 456, full stop 228 thousandths of the em.
        assertThat(Typesetter.width("12.5", TEN)).isEqualTo(3 * 4.56 + 2.28, within(1e-9));
    }

    @Test
    void a_fraction_becomes_small_raised_and_small_lowered_figures_round_a_slash() {
        TypeLine line = Typesetter.line("8′-9 3⁄4″", TEN);
        assertThat(letters(line)).containsExactly("8′-9 ", "3", "⁄", "4", "″");
        Run above = line.runs().get(1);
        Run below = line.runs().get(3);
        assertThat(above.em()).isEqualTo(below.em()).isLessThan(10);
        assertThat(above.up()).isPositive();
        assertThat(below.up()).isNegative();
        assertThat(line.reads()).isEqualTo("8′-9 3⁄4″");
    }

    @Test
    void the_figures_of_a_fraction_stand_on_either_side_of_their_slash_and_do_not_touch() {
        TypeLine line = Typesetter.line("15⁄16", TEN);
        Quad above = box(line.runs().get(0));
        Quad below = box(line.runs().get(2));
        assertThat(above.overlaps(below)).isFalse();
        assertThat(line.runs().get(2).across())
                .isGreaterThan(line.runs().get(0).across() + line.runs().get(0).width());
    }

    private static Quad box(Run run) {
        return TextBox.of(new Mark.Text(PartRef.NONE, Spot.of(0, 0), 0, List.of(run), run.letters()));
    }

    @Test
    void a_fraction_stands_closer_to_its_whole_number_than_a_word_would() {
        TypeLine line = Typesetter.line("9 3⁄4", TEN);
        double gap = line.runs().get(1).across() - Typesetter.width("9", TEN);
        assertThat(gap).isBetween(0.3, Typesetter.width(" ", TEN) - 0.3);
    }

    @Test
    void a_slash_without_figures_on_both_sides_is_only_a_slash() {
        assertThat(letters(Typesetter.line("and⁄or", TEN))).containsExactly("and⁄or");
        assertThat(letters(Typesetter.line("3⁄", TEN))).containsExactly("3⁄");
    }

    @Test
    void two_fractions_in_one_line_are_both_set() {
        assertThat(letters(Typesetter.line("1 1⁄2 × 11 1⁄4", TEN)))
                .containsExactly("1 ", "1", "⁄", "2", " × 11 ", "1", "⁄", "4");
    }

    @Test
    void words_between_double_stars_are_bold() {
        TypeLine line = Typesetter.line("cut **7 in** here", TEN);
        assertThat(letters(line)).containsExactly("cut ", "7 in", " here");
        assertThat(line.runs().stream().map(Run::face)).containsExactly(Face.REGULAR, Face.BOLD, Face.REGULAR);
        assertThat(line.reads()).isEqualTo("cut 7 in here");
    }

    @Test
    void runs_follow_each_other_without_a_gap() {
        TypeLine line = Typesetter.line("cut **7 in** here", TEN);
        assertThat(line.runs().get(1).across()).isEqualTo(Typesetter.width("cut ", TEN), within(1e-4));
        assertThat(line.width())
                .isEqualTo(line.runs().get(2).across() + line.runs().get(2).width(), within(1e-4));
    }

    @Test
    void a_line_is_put_left_centred_or_right_of_its_spot_and_turns_about_it() {
        TypeLine line = Typesetter.line("0000", TEN);
        assertThat(line.at(PartRef.NONE, Spot.of(50, 20), 0, Align.LEFT).at()).isEqualTo(Spot.of(50, 20));
        assertThat(line.at(PartRef.NONE, Spot.of(50, 20), 0, Align.RIGHT).at()).isEqualTo(Spot.of(31.76, 20));
        assertThat(line.at(PartRef.NONE, Spot.of(50, 20), 90, Align.CENTRE).at())
                .isEqualTo(Spot.of(50, 29.12));
    }

    @Test
    void a_line_that_must_fit_is_set_smaller_before_it_is_cut() {
        double natural = Typesetter.width("Boathouse, stair to the sail loft", TEN);
        TypeLine smaller = Fitting.line("Boathouse, stair to the sail loft", TEN, natural * 0.8);
        assertThat(smaller.reads()).isEqualTo("Boathouse, stair to the sail loft");
        assertThat(smaller.width()).isLessThanOrEqualTo(natural * 0.8);
        TypeLine cut = Fitting.line("Boathouse, stair to the sail loft", TEN, natural * 0.4);
        assertThat(cut.reads()).startsWith("Boathouse, ").endsWith("…");
        assertThat(cut.width()).isLessThanOrEqualTo(natural * 0.4);
    }
}
