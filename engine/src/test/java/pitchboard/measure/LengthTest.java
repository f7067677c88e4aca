package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class LengthTest {
    private static final Length TOTAL_RISE = Length.feet(9);

    @Test
    void nine_feet_over_fourteen_risers_is_seven_and_five_sevenths() {
        assertThat(TOTAL_RISE.dividedBy(14)).isEqualTo(Length.inches(7, 5, 7)).hasToString("54/7 in");
    }

    @Test
    void an_inch_is_twenty_five_point_four_millimetres() {
        assertThat(Length.inches(1)).isEqualTo(Length.mm(Ratio.of(254, 10)));
        assertThat(Length.mm(1).inInches()).isEqualTo(Ratio.of(5, 127));
        assertThat(Length.inches(9, 3, 4).inMm()).isEqualTo(Ratio.of(24765, 100));
    }

    /** Because a line that is a whole number of units never needs a wide fraction. */
    @ParameterizedTest
    @EnumSource(Graduation.class)
    void every_line_of_either_tape_is_a_whole_number_of_units(Graduation graduation) {
        assertThat(graduation.step().times(320).inMm().isWhole()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            1,  32, 1
            -1, 32, -1
            3,  32, 2
            -3, 32, -2
            31, 1000, 0
            32, 1000, 1
            -31, 1000, 0
            """)
    void halves_go_away_from_zero(long numerator, long denominator, long sixteenths) {
        assertThat(Length.inches(0, numerator, denominator).rounded(Graduation.SIXTEENTH_INCH))
                .isEqualTo(Length.inches(0, sixteenths, 16));
    }

    @Test
    void rounding_down_and_up_keep_to_their_side_of_zero() {
        Length above = Length.inches(7, 1, 10);
        assertThat(above.roundedDown(Graduation.EIGHTH_INCH)).isEqualTo(Length.inches(7));
        assertThat(above.roundedUp(Graduation.EIGHTH_INCH)).isEqualTo(Length.inches(7, 1, 8));
        assertThat(above.negated().roundedDown(Graduation.EIGHTH_INCH)).isEqualTo(Length.inches(-7, -1, 8));
        assertThat(above.negated().roundedUp(Graduation.EIGHTH_INCH)).isEqualTo(Length.inches(-7));
    }

    @Test
    void a_step_is_not_divided_into_no_parts() {
        assertThatThrownBy(() -> TOTAL_RISE.dividedBy(0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> TOTAL_RISE.over(Length.ZERO)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void a_length_along_a_slope_must_be_rounded_before_it_is_a_number() {
        Length along = Length.diagonal(Length.inches(7), Length.inches(10));
        assertThat(along).hasToString("0 + 1 sqrt(149) in");
        assertThat(along.isRational()).isFalse();
        assertThatThrownBy(along::inInches)
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("a length along a slope is no plain fraction; round it first");
        assertThat(along.rounded(Graduation.SIXTEENTH_INCH).inInches()).isEqualTo(Ratio.of(195, 16));
    }

    @Test
    void whole_times_counts_down_also_below_zero() {
        assertThat(TOTAL_RISE.wholeTimes(Length.inches(7, 3, 4))).isEqualTo(13);
        assertThat(TOTAL_RISE.wholeTimes(Length.inches(9))).isEqualTo(12);
        assertThat(TOTAL_RISE.negated().wholeTimes(Length.inches(7, 3, 4))).isEqualTo(-14);
    }

    @Test
    void marking_keeps_what_rounding_gave_up() {
        Marked marked = Marked.of(Length.inches(7, 2, 15), Graduation.SIXTEENTH_INCH);
        assertThat(marked.line()).isEqualTo(Length.inches(7, 1, 8));
        assertThat(marked.givenUp()).isEqualTo(Length.inches(0, -1, 120));
    }

    @Test
    void millimetres_for_drawing_are_near_the_exact_ones() {
        assertThat(Length.inches(9, 3, 4).approxMm()).isEqualTo(247.65);
        // 25.4 times the root of 149, which is 12.206555615733702952...
        assertThat(Length.diagonal(Length.inches(7), Length.inches(10)).approxMm())
                .isCloseTo(310.046512639636, within(1e-12));
    }
}
