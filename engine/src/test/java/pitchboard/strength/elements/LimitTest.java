package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class LimitTest {
    /** 10 - 2^-k: the error halves each time. */
    @Test
    void errors_that_halve_lead_to_their_limit() {
        Limit limit = Limit.of(9, 9.5, 9.75);
        assertThat(limit.settled()).isTrue();
        assertThat(limit.value()).isCloseTo(10, within(1e-12));
        assertThat(limit.uncertain()).isCloseTo(0.025, within(1e-12));
    }

    @Test
    void answers_that_swing_or_hardly_draw_together_lead_nowhere() {
        assertThat(Limit.of(9, 9.5, 9.4)).isEqualTo(new Limit(9.4, 9.4, Math.abs((9.4 - 9.5) / 9.4), false));
        assertThat(Limit.of(9, 9.1, 9.2).settled()).isFalse();
    }

    @Test
    void one_answer_says_nothing_of_its_error() {
        assertThat(Limit.of(5)).isEqualTo(new Limit(5, 5, 1, false));
    }

    @Test
    void two_answers_tell_their_difference() {
        assertThat(Limit.of(4, 5)).isEqualTo(new Limit(5, 5, 0.2, false));
    }

    @Test
    void the_same_answer_three_times_is_settled() {
        assertThat(Limit.of(5, 5, 5)).isEqualTo(new Limit(5, 5, 0, true));
        assertThat(Limit.of(0, 0, 0)).isEqualTo(new Limit(0, 0, 0, true));
    }
}
