package pitchboard.railing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;

/**
 * Balusters of 1 1/2 in in a clear length so that a ball of 4 in does not pass. Own arithmetic by
 * {@code n = ceil((L − g) / (w + g))}, gap {@code (L − n·w) / (n + 1)}, to the place given.
 */
final class SpacingWorkedExamplesTest {
    private static final Length WIDTH = Length.inches(1, 1, 2);
    private static final Length BALL = Length.inches(4);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # clear | balusters | gap   | half a unit of its last place
            60      | 11        | 3.625 | 0
            72      | 13        | 3.75  | 0
            52      | 9         | 3.85  | 0
            96      | 17        | 3.917 | 0.0005
            66      | 12        | 3.692 | 0.0005
            # 8 balusters leave exactly 4, which a ball of 4 passes, so 9.
            48      | 9         | 3.45  | 0
            """)
    void balusters_and_gap_of_a_clear_length(String clear, int count, double gap, double half) {
        Spacing spacing = Spacing.of(Read.inches(clear), WIDTH, BALL);
        assertThat(spacing.count()).isEqualTo(count);
        assertThat(spacing.gap().approxMm() / 25.4).isCloseTo(gap, within(half + 1e-9));
    }

    @Test
    void a_gap_of_just_the_ball_is_too_wide() {
        assertThat(new Spacing(Length.inches(48), WIDTH, 8).gap()).isEqualTo(BALL);
        assertThat(Spacing.of(Length.inches(48), WIDTH, Length.inches(4, 1, 64)).count())
                .isEqualTo(8);
    }

    /** Own arithmetic: 11 gaps of 3 5/8 and 10 balusters of 1 1/2 come to 54 7/8, and the last ends 3 5/8 before 60. */
    @Test
    void marks_run_from_one_end_and_the_last_leaves_the_same_gap() {
        Spacing spacing = Spacing.of(Length.inches(60), WIDTH, BALL);
        Marked last = spacing.marks(Graduation.SIXTEENTH_INCH).get(10);
        assertThat(last.line()).isEqualTo(Length.inches(54, 7, 8));
        assertThat(last.givenUp()).isEqualTo(Length.ZERO);
    }

    @Test
    void what_a_ball_does_not_pass_needs_no_baluster() {
        assertThat(Spacing.of(Length.inches(3, 15, 16), WIDTH, BALL).count()).isZero();
        assertThat(Spacing.of(BALL, WIDTH, BALL).count()).isEqualTo(1);
    }

    @Test
    void where_enough_pieces_find_no_room_the_most_that_do_are_taken() {
        Spacing boards = Spacing.of(Length.inches(20), Length.inches(5, 1, 2), Length.inches(0, 1, 2));
        assertThat(boards.count()).isEqualTo(3);
        assertThat(boards.gap()).isEqualTo(Length.inches(0, 7, 8));
    }
}
