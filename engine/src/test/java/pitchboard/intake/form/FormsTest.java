package pitchboard.intake.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Field;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.intake.written.Written;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;

/** Single values, both ways. */
final class FormsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            level             | 0 | 1
            Level             | 0 | 1
            0 %               | 0 | 1
            1 in 60           | 1 | 60
            1:60              | 1 | 60
            1.5 in 60         | 1 | 40
            2 %               | 1 | 50
            2%                | 1 | 50
            0.5 %             | 1 | 200
            1/4" per foot     | 1 | 48
            1/4 in per ft     | 1 | 48
            20 mm per metre   | 1 | 50
            20 mm per m       | 1 | 50
            """)
    void a_fall_is_written_as_builders_say_it(String text, long drop, long distance) {
        Ratio fall = Ratio.of(drop, distance);
        assertThat(read(Bounds.FALL, text)).contains(fall);
        Written again = Bounds.FALL.write(fall, Tape.Units.INCHES);
        assertThat(Bounds.FALL.read(again, Proof.unread())).contains(fall);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1",
                "flat",
                "1 in 0",
                "1 in",
                "in 60",
                "1 in 2",
                "30 %",
                "%",
                "-1 %",
                "1:2:3",
                "1/4 per foot",
                "per",
                "1/4\" per",
                "1/4\" per furlong",
                "1 in 999999999999",
                "0.000000001 %",
                "1 2 in 60"
            })
    void anything_else_is_no_fall(String text) {
        assertThat(read(Bounds.FALL, text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # typed            | inches        | millimetres
            8' 9 3/4"          | 8'-9 3/4"     | 2686.05 mm
            105.7 in           | 105.7 in      | 2684.78 mm
            2686 mm            | 2686 mm       | 2686 mm
            0.1 mm             | 0.1 mm        | 0.1 mm
            254 mm             | 10"           | 254 mm
            8.1 ft             | 97.2 in       | 2468.88 mm
            1/64"              | 1/64"         | 0.396875 mm
            """)
    void a_length_is_written_so_that_it_reads_the_same_whatever_bare_numbers_count(
            String typed, String inInches, String inMillimetres) {
        Length length = length(typed).orElseThrow();
        assertThat(LengthText.exact(length, Tape.Units.INCHES)).isEqualTo(inInches);
        assertThat(LengthText.exact(length, Tape.Units.MILLIMETRES)).isEqualTo(inMillimetres);
        assertThat(length(inInches)).contains(length);
        assertThat(length(inMillimetres)).contains(length);
    }

    @Test
    void a_length_that_nobody_can_have_typed_is_not_written() {
        assertThatThrownBy(() -> LengthText.exact(Length.inches(1, 1, 7), Tape.Units.INCHES))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no tape text says exactly 8/7 in");
    }

    /** Else 12 would be twelve inches in one job and half an inch in the next. */
    @Test
    void without_units_only_a_length_with_its_unit_is_one() {
        assertThat(length("12")).isEmpty();
        assertThat(length("12 in")).contains(Length.inches(12));
        assertThat(length("0")).contains(Length.ZERO);
    }

    private static Optional<Length> length(String text) {
        return Proof.begin().findLength(new Written.Text(text), false);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1_000", "0x10", "1e1", "12.0", "+12", "-12", "twelve", "", "99999999999", "\uff11\uff12"})
    void a_count_is_plain_digits(String text) {
        assertThat(read(Bounds.RISERS, text)).isEmpty();
    }

    @Test
    void a_zero_before_a_count_changes_nothing() {
        assertThat(read(Bounds.RISERS, "012")).contains(12);
    }

    @Test
    void line_breaks_between_words_become_blanks_and_other_controls_are_refused() {
        Form<String> words = Forms.words(10, "a");
        assertThat(read(words, "  a\n  b\tc ")).contains("a b c");
        assertThat(read(words, "a\u0007")).isEmpty();
        assertThat(read(words, "12345678901")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Tape.Units.class)
    void what_is_shown_as_an_example_can_be_read(Tape.Units units) throws IllegalAccessException {
        for (Field field : Bounds.class.getFields()) {
            if (field.get(null) instanceof Form<?> form) {
                assertThat(read(form, form.example(units))).as(field.getName()).isPresent();
                assertThat(form.standIn()).as(field.getName()).isNotNull();
            }
        }
    }

    @Test
    void a_range_takes_its_ends_and_nothing_beyond_them() throws IllegalAccessException {
        Length step = Length.inches(0, 1, 64);
        int ranges = 0;
        for (Field field : Bounds.class.getFields()) {
            if (field.get(null) instanceof LengthForm form) {
                Length least = form.range().least();
                Length most = form.range().most();
                assertThat(takes(form, least)).as(field.getName()).isTrue();
                assertThat(takes(form, most)).as(field.getName()).isTrue();
                assertThat(takes(form, least.minus(step))).as(field.getName()).isFalse();
                assertThat(takes(form, most.plus(step))).as(field.getName()).isFalse();
                ranges++;
            }
        }
        assertThat(ranges).isGreaterThan(25);
    }

    private static boolean takes(LengthForm form, Length length) {
        return read(form, LengthText.exact(length, Tape.Units.INCHES)).isPresent();
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            tred, tread
            traed, tread
            TREAD, tread
            treads, tread
            raise, rise
            sole, ''
            completely different, ''
            '', ''
            """)
    void the_nearest_word_is_found_when_one_is_near(String typed, String word) {
        List<String> known = List.of("tread", "rise", "run", "head", "foot");
        assertThat(Nearest.find(typed, known)).isEqualTo(Optional.of(word).filter(found -> !found.isEmpty()));
    }

    @Test
    void of_two_equally_near_words_none_is_suggested() {
        assertThat(Nearest.find("IRC 2012", List.of("IRC 2018", "IRC 2021"))).isEmpty();
    }

    @Test
    void of_many_names_those_that_begin_so_or_are_equally_near_are_told() {
        List<String> known = List.of("IRC 2018", "IRC 2021", "IBC 2021", "AD K 2013 private", "AD K 2013 utility");
        assertThat(Nearest.findAll("irc", known)).containsExactly("IRC 2018", "IRC 2021");
        assertThat(Nearest.findAll("AD K 2013", known)).containsExactly("AD K 2013 private", "AD K 2013 utility");
        assertThat(Nearest.findAll("IRC 2022", known)).containsExactly("IRC 2021");
        assertThat(Nearest.findAll("IXC 2021", known)).containsExactly("IRC 2021", "IBC 2021");
        assertThat(Nearest.findAll("", known)).isEmpty();
        assertThat(Nearest.findAll("the moon", known)).isEmpty();
    }

    private static <T> Optional<T> read(Form<T> form, String text) {
        return form.read(new Written.Text(text), Proof.unread());
    }
}
