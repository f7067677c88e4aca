package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pitchboard.Samples;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/** The heights marked on the story pole, on random stairs. */
final class StoryPoleLawsTest {
    private static final Samples<Stair> STAIRS = Samples.anyStairs(4_000);

    @Test
    void the_last_mark_is_within_half_a_graduation_of_the_floor() {
        STAIRS.hold(stair -> {
            StoryPole pole = StoryPole.of(stair);
            Length graduation = stair.brief().tape().graduation().step();
            Length last = pole.heights().get(pole.heights().size() - 1).line();
            assertThat(last.minus(stair.flight().totalRise()).abs().times(2).isAtMost(graduation))
                    .isTrue();
        });
    }

    @Test
    void marked_rises_differ_by_one_graduation_at_most() {
        STAIRS.hold(stair -> {
            Length graduation = stair.brief().tape().graduation().step();
            assertThat(StoryPole.of(stair).spread()).isIn(Length.ZERO, graduation);
        });
    }

    @Test
    void marked_rises_sum_to_the_last_mark() {
        STAIRS.hold(stair -> {
            StoryPole pole = StoryPole.of(stair);
            assertThat(pole.rises()).hasSize(stair.flight().risers());
            assertThat(pole.rises().stream().reduce(Length.ZERO, Length::plus))
                    .isEqualTo(pole.heights().get(pole.heights().size() - 1).line());
        });
    }
}
