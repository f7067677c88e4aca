package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PitchTest {
    /** 3-4-5, two and a half times as large. */
    private static final Pitch THREE_FOUR_FIVE = Pitch.of(Length.inches(7, 1, 2), Length.inches(10));

    @Test
    void seven_and_a_half_on_ten_is_a_three_four_five_without_any_root() {
        Length step = THREE_FOUR_FIVE.alongForLevel(Length.inches(10));
        assertThat(step).isEqualTo(Length.inches(12, 1, 2));
        assertThat(step.isRational()).isTrue();
        assertThat(THREE_FOUR_FIVE.sinTimes(step)).isEqualTo(Length.inches(7, 1, 2));
        assertThat(THREE_FOUR_FIVE.cosTimes(step)).isEqualTo(Length.inches(10));
    }

    @Test
    void its_notch_in_a_board_is_six_exactly() {
        Length notch = THREE_FOUR_FIVE.cosTimes(Length.inches(7, 1, 2));
        assertThat(notch).isEqualTo(Length.inches(6));
        assertThat(Length.inches(11, 1, 4).minus(notch)).isEqualTo(Length.inches(5, 1, 4));
    }

    @Test
    void rise_and_level_distance_give_each_other_back() {
        assertThat(THREE_FOUR_FIVE.riseOver(Length.inches(4))).isEqualTo(Length.inches(3));
        assertThat(THREE_FOUR_FIVE.levelFor(Length.inches(3))).isEqualTo(Length.inches(4));
    }

    @Test
    void a_level_pitch_climbs_nowhere() {
        Pitch level = Pitch.of(Length.ZERO, Length.inches(10));
        assertThat(level.alongForLevel(Length.inches(10))).isEqualTo(Length.inches(10));
        assertThat(level.degrees()).isZero();
        assertThatThrownBy(() -> level.levelFor(Length.inches(1))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Pitch.of(Length.inches(7), Length.ZERO)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void along_and_back_is_exact_on_any_slope() {
        Draws.times(5_000, 31, draws -> {
            Pitch pitch = draws.pitch();
            Length level = draws.jobLength();
            Length along = pitch.alongForLevel(level);
            assertThat(pitch.cosTimes(along)).isEqualTo(level);
            assertThat(pitch.sinTimes(along)).isEqualTo(pitch.riseOver(level));
            assertThat(pitch.plumbForDepth(pitch.cosTimes(level))).isEqualTo(level);
        });
    }

    /** Tangents by the tables: tan 42 degrees is 0.900404044, tan 30 is 0.577350269, tan 50 is 1.191753593. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            900404044, 1000000000, 42, -1
            900404045, 1000000000, 42,  1
            577350269, 1000000000, 30, -1
            577350270, 1000000000, 30,  1
            1191753592, 1000000000, 50, -1
            1191753593, 1000000000, 50,  1
            1,  1,         45,  0
            999999999999, 1000000000000, 45, -1
            1000000000001, 1000000000000, 45, 1
            0,  1,          0,  0
            1,  1000000000000, 0, 1
            -1, 1,        -45,  0
            1,  1,         90, -1
            """)
    void a_pitch_is_held_against_a_printed_angle_on_either_side(long rise, long run, long degrees, int expected) {
        Pitch pitch = Pitch.of(Length.mm(rise), Length.mm(run));
        assertThat(Integer.signum(pitch.compareTo(Angle.degrees(degrees)))).isEqualTo(expected);
    }

    @Test
    void pitches_are_ordered_by_their_slope() {
        Pitch shallow = Pitch.of(Length.inches(7), Length.inches(11));
        assertThat(shallow).isLessThan(THREE_FOUR_FIVE).isNotEqualTo(THREE_FOUR_FIVE);
        assertThat(Pitch.of(Length.inches(3), Length.inches(4)))
                .isEqualTo(THREE_FOUR_FIVE)
                .hasSameHashCodeAs(THREE_FOUR_FIVE);
    }
}
