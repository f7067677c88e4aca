package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.Samples;
import pitchboard.measure.Length;

/** Stringers of 1 1/2 in under treads of 40 in. */
final class StringerSpacingTest {
    private static StringerSpacing spacing(int count, Length overhang) {
        return StringerSpacing.of(
                new OrdinaryJob().width(Length.inches(40), count, overhang).brief());
    }

    @Test
    void without_overhang_the_outer_faces_are_the_ends_of_the_treads() {
        StringerSpacing spacing = spacing(3, Length.ZERO);
        assertThat(spacing.overall()).isEqualTo(Length.inches(40));
        assertThat(spacing.spacing()).isEqualTo(Length.inches(19, 1, 4));
        assertThat(spacing.clear()).isEqualTo(Length.inches(17, 3, 4));
        assertThat(spacing.middles())
                .containsExactly(Length.inches(0, 3, 4), Length.inches(20), Length.inches(39, 1, 4));
    }

    @Test
    void overhang_moves_the_outer_ones_in_and_leaves_the_middle_one_where_it_is() {
        StringerSpacing spacing = spacing(3, Length.inches(1));
        assertThat(spacing.overall()).isEqualTo(Length.inches(38));
        assertThat(spacing.middles())
                .containsExactly(Length.inches(1, 3, 4), Length.inches(20), Length.inches(38, 1, 4));
    }

    @Test
    void middles_are_evenly_spread_and_the_same_from_either_end() {
        Samples.jobs(1_000).hold(job -> {
            StringerSpacing spacing = StringerSpacing.of(job.brief());
            int count = job.brief().stringers().count();
            assertThat(spacing.middles()).hasSize(count);
            for (int i = 0; i < count; i++) {
                Length fromLeft = spacing.middles().get(i);
                Length fromRight = job.brief().width().minus(spacing.middles().get(count - 1 - i));
                assertThat(fromLeft).isEqualTo(fromRight);
            }
            assertThat(spacing.spacing()
                            .times(count - 1L)
                            .plus(job.brief().stringers().stock().thickness()))
                    .isEqualTo(spacing.overall());
        });
    }
}
