package pitchboard.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Pitch;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit.Bound;

final class LimitTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            # the limit itself passes, unless it must be undercut or exceeded
            AT_MOST,   3 63/64 in, true
            AT_MOST,   4 in,       true
            AT_MOST,   4 1/64 in,  false
            LESS_THAN, 3 63/64 in, true
            LESS_THAN, 4 in,       false
            LESS_THAN, 4 1/64 in,  false
            AT_LEAST,  3 63/64 in, false
            AT_LEAST,  4 in,       true
            AT_LEAST,  4 1/64 in,  true
            MORE_THAN, 3 63/64 in, false
            MORE_THAN, 4 in,       false
            MORE_THAN, 4 1/64 in,  true
            """)
    void a_bound_is_kept_at_it_and_on_its_own_side(Bound bound, String measured, boolean kept) {
        assertThat(new Limit(bound, Length.inches(4)).admits(Read.inches(measured)))
                .isEqualTo(kept);
    }

    @Test
    void a_length_with_a_root_in_it_is_held_exactly() {
        Length diagonal = Pitch.of(Length.inches(1), Length.inches(1)).alongForLevel(Length.inches(1));
        assertThat(Limit.atMost(Read.inches("1.414213562 in")).admits(diagonal)).isFalse();
        assertThat(Limit.atMost(Read.inches("1.414213563 in")).admits(diagonal)).isTrue();
    }

    @Test
    void a_pitch_is_held_against_an_angle() {
        assertThat(Limit.atMost(Angle.degrees(45)).admits(Pitch.of(Length.mm(220), Length.mm(220))))
                .isTrue();
        assertThat(Limit.atMost(Angle.degrees(42)).admits(Pitch.of(Length.mm(220), Length.mm(220))))
                .isFalse();
    }

    @Test
    void counts_slopes_areas_and_angles_are_held_against_their_own() {
        assertThat(Limit.lessThan(new Count(4)).admits(new Count(4))).isFalse();
        assertThat(Limit.atMost(Ratio.of(1, 48)).admits(Ratio.of(1, 47))).isFalse();
        assertThat(Limit.atMost(Angle.degrees(30)).admits(Angle.degrees(30))).isTrue();
        Area area = Area.of(Length.inches(7, 1, 2), Length.inches(10));
        assertThat(Limit.atMost(area).admits(area)).isTrue();
    }

    @Test
    void what_cannot_be_compared_is_a_mistake_of_the_program() {
        assertThatThrownBy(() -> Limit.atMost(Length.inches(4)).admits(new Count(4)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a count cannot be held against a length");
    }

    @Test
    void a_pass_and_a_fail_carry_what_was_measured_and_the_limit() {
        Limit limit = Limit.atMost(Length.inches(4));
        Phrase remedy = Phrase.of("make it smaller");
        assertThat(limit.judge(Length.inches(4), Place.EVERY_STEP, () -> remedy))
                .isEqualTo(new Verdict.Pass(Length.inches(4), limit));
        assertThat(limit.judge(Length.inches(5), Place.EVERY_STEP, () -> remedy))
                .isEqualTo(new Verdict.Fail(Length.inches(5), limit, Place.EVERY_STEP, remedy));
    }
}
