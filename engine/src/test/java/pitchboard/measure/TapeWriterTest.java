package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Tape.Style;

final class TapeWriterTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # whole inches, 64ths | feet and inches | printed        | inches alone
            105 | 48              | 8'-9 3/4"       | 8′-9 3⁄4″      | 105 3/4"
            120 | 0               | 10'-0"          | 10′-0″         | 120"
            12  | 32              | 1'-0 1/2"       | 1′-0 1⁄2″      | 12 1/2"
            96  | 48              | 8'-0 3/4"       | 8′-0 3⁄4″      | 96 3/4"
            11  | 60              | 11 15/16"       | 11 15⁄16″      | 11 15/16"
            0   | 24              | 3/8"            | 3⁄8″           | 3/8"
            0   | 0               | 0"              | 0″             | 0"
            0   | 1               | 0"              | 0″             | 0"
            0   | 2               | 1/16"           | 1⁄16″          | 1/16"
            11  | 62              | 1'-0"           | 1′-0″          | 12"
            11  | 61              | 11 15/16"       | 11 15⁄16″      | 11 15/16"
            -105 | -48            | -8'-9 3/4"      | −8′-9 3⁄4″     | -105 3/4"
            0   | -2              | -1/16"          | −1⁄16″         | -1/16"
            0   | -1              | 0"              | 0″             | 0"
            """)
    void sixteenths_are_reduced_and_carried_into_inches_and_feet(
            long whole, long sixtyFourths, String feet, String printed, String inches) {
        Length length = Length.inches(whole, sixtyFourths, 64);
        Graduation sixteenth = Graduation.SIXTEENTH_INCH;
        assertThat(TapeWriter.feetAndInches(length, sixteenth, Style.PLAIN)).isEqualTo(feet);
        assertThat(TapeWriter.feetAndInches(length, sixteenth, Style.PRINTED)).isEqualTo(printed);
        assertThat(TapeWriter.inches(length, sixteenth, Style.PLAIN)).isEqualTo(inches);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            EIGHTH_INCH        | 7 3/4"
            SIXTEENTH_INCH     | 7 11/16"
            THIRTY_SECOND_INCH | 7 23/32"
            SIXTY_FOURTH_INCH  | 7 23/32"
            """)
    void seven_and_five_sevenths_is_the_nearest_line_of_any_tape(Graduation graduation, String expected) {
        assertThat(TapeWriter.inches(Length.inches(7, 5, 7), graduation, Style.PLAIN))
                .isEqualTo(expected);
    }

    @Test
    void decimal_lengths_have_the_places_that_are_asked_for() {
        Length length = Length.inches(105, 3, 4);
        assertThat(TapeWriter.decimalInches(length, 2, Style.PLAIN)).isEqualTo("105.75 in");
        assertThat(TapeWriter.decimalInches(length, 1, Style.PLAIN)).isEqualTo("105.8 in");
        assertThat(TapeWriter.mm(length, 0, Style.PLAIN)).isEqualTo("2686 mm");
        assertThat(TapeWriter.mm(length, 1, Style.PLAIN)).isEqualTo("2686.1 mm");
        assertThat(TapeWriter.metres(length, 3, Style.PLAIN)).isEqualTo("2.686 m");
        assertThat(TapeWriter.mm(length.negated(), 0, Style.PRINTED)).isEqualTo("−2686 mm");
        assertThat(TapeWriter.mm(Length.mm(Ratio.of(-4, 10)), 0, Style.PLAIN)).isEqualTo("0 mm");
    }

    @Test
    void a_slope_is_rounded_once_not_through_a_coarser_line_first() {
        // The root of 149 is 12.20655..., so three places end in 7 although two would end in 1.
        Length along = Length.diagonal(Length.inches(7), Length.inches(10));
        assertThat(TapeWriter.decimalInches(along, 3, Style.PLAIN)).isEqualTo("12.207 in");
        assertThat(TapeWriter.decimalInches(along, 2, Style.PLAIN)).isEqualTo("12.21 in");
        assertThat(TapeWriter.inches(along, Graduation.SIXTEENTH_INCH, Style.PLAIN))
                .isEqualTo("12 3/16\"");
    }

    @Test
    void each_tape_writes_sizes_and_running_marks_its_own_way() {
        Length length = Length.inches(105, 3, 4);
        Tape halves = new Tape(Tape.Units.MILLIMETRES, Graduation.HALF_MILLIMETRE);
        assertThat(TapeWriter.write(length, Tape.SIXTEENTHS, Style.PLAIN)).isEqualTo("8'-9 3/4\"");
        assertThat(TapeWriter.writeRunning(length, Tape.SIXTEENTHS, Style.PLAIN))
                .isEqualTo("105 3/4\"");
        assertThat(TapeWriter.write(length, Tape.MILLIMETRES, Style.PLAIN)).isEqualTo("2686 mm");
        assertThat(TapeWriter.writeRunning(length, Tape.MILLIMETRES, Style.PLAIN))
                .isEqualTo("2686 mm");
        assertThat(TapeWriter.write(length, halves, Style.PLAIN)).isEqualTo("2686.0 mm");
    }

    @Test
    void a_fraction_that_no_tape_has_is_never_written() {
        assertThatThrownBy(() -> TapeWriter.inches(Length.inches(1), Graduation.MILLIMETRE, Style.PLAIN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no tape shows inches in steps of MILLIMETRE");
    }
}
