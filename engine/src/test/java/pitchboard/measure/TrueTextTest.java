package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;

final class TrueTextTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # on a line of the tape, as the tape has it; inches stay inches
            36 in       | 36"
            7 3/4 in    | 7 3/4"
            105.0625 in | 105 1/16"
            # off the lines, in decimals, without zeros at the end
            7.7 in      | 7.7 in
            9.984375 in | 9.984 in
            -1/64 in    | -0.016 in
            """)
    void lengths_are_shown_as_they_are_and_not_as_the_nearest_line(String length, String expected) {
        assertThat(inches(Read.inches(length))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            220 mm     | 220 mm
            219.9 mm   | 219.9 mm
            # 7 3/4 in, which a tape of millimetres would round up beyond the limit
            7 3/4 in   | 196.85 mm
            4 3/8 in   | 111.125 mm
            """)
    void a_limit_of_the_other_tape_is_not_rounded_either(String length, String expected) {
        assertThat(TrueText.write(Read.inches(length), Tape.MILLIMETRES, Tape.Style.PLAIN))
                .isEqualTo(expected);
    }

    @Test
    void a_length_along_a_slope_is_shown_in_decimals() {
        Length diagonal = Pitch.of(Length.inches(1), Length.inches(1)).alongForLevel(Length.inches(1));
        assertThat(inches(diagonal)).isEqualTo("1.414 in");
    }

    @Test
    void slopes_are_one_in_so_many() {
        assertThat(inches(Ratio.of(1, 48))).isEqualTo("1 in 48");
        assertThat(inches(Ratio.of(2, 100))).isEqualTo("1 in 50");
        assertThat(inches(Ratio.of(3, 100))).isEqualTo("1 in 33.3");
        assertThat(inches(Ratio.ZERO)).isEqualTo("0");
        assertThat(inches(Ratio.of(3, 2))).isEqualTo("1.5");
    }

    @Test
    void angles_and_counts_are_plain() {
        assertThat(inches(Angle.degrees(42))).isEqualTo("42 deg");
        assertThat(inches(Pitch.of(Length.inches(3), Length.inches(4)))).isEqualTo("36.9 deg");
        assertThat(inches(new Count(14))).isEqualTo("14");
        assertThat(TrueText.write(Angle.degrees(42), Tape.MILLIMETRES, Tape.Style.PRINTED))
                .isEqualTo("42°");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # alike to three places, and not alike
            7.75004 in | 7.75 in  | 7.75004 in
            8.12344 in | 8.1234 in| 8.12344 in
            # 1/64 in over twelve steps is told apart by the third place already
            7.7513 in  | 7.75 in  | 7.751 in
            # the same is the same
            7.75 in    | 7.75 in  | 7 3/4"
            """)
    void two_that_differ_never_read_alike(String length, String from, String expected) {
        assertThat(TrueText.writeApart(Read.inches(length), Read.inches(from), Tape.SIXTEENTHS, Tape.Style.PLAIN))
                .isEqualTo(expected);
    }

    @Test
    void a_pitch_just_over_its_limit_does_not_read_like_it() {
        Pitch pitch = Pitch.of(Length.mm(Ratio.of(1981, 10)), Length.mm(220));
        assertThat(TrueText.writeApart(pitch, Angle.degrees(42), Tape.MILLIMETRES, Tape.Style.PLAIN))
                .isEqualTo("42.002 deg");
    }

    private static String inches(Quantity quantity) {
        return TrueText.write(quantity, Tape.SIXTEENTHS, Tape.Style.PLAIN);
    }
}
