package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pitchboard.Samples;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;

/** Heights and places of steps, on random stairs, good and bad. */
final class StairLawsTest {
    private static final Samples<Stair> STAIRS = Samples.anyStairs(4_000);

    @Test
    void rises_sum_to_the_total_rise_exactly() {
        STAIRS.hold(stair -> {
            Flight flight = stair.flight();
            Length sum = IntStream.range(0, flight.risers())
                    .mapToObj(i -> flight.rise())
                    .reduce(Length.ZERO, Length::plus);
            assertThat(sum).isEqualTo(flight.totalRise());
        });
    }

    /** Floor finish, tread and seat taken together, the wood climbs exactly what is to be climbed. */
    @Test
    void first_cut_steps_and_last_rise_close_on_the_finished_floors() {
        STAIRS.hold(stair -> {
            int treads = stair.treads();
            Length lastRise = stair.flight().totalRise().minus(stair.rise().times(treads));
            Length climbed = stair.seat()
                    .plus(stair.firstCut())
                    .plus(stair.levelCut(treads).minus(stair.levelCut(1)))
                    .plus(stair.treadThickness())
                    .plus(lastRise);
            assertThat(climbed).isEqualTo(stair.flight().totalRise());
            assertThat(lastRise).isEqualTo(stair.flight().headJoin() == HeadJoin.FLUSH ? Length.ZERO : stair.rise());
        });
    }

    @Test
    void nosings_are_one_run_apart_and_project_in_front_of_the_riser_below() {
        STAIRS.hold(stair -> {
            Length riserFace = stair.riserCut(1).minus(stair.riserThickness());
            assertThat(riserFace.minus(stair.nosing(1).x())).isEqualTo(stair.projection());
            for (int step = 2; step <= stair.treads(); step++) {
                assertThat(stair.nosing(step).x().minus(stair.nosing(step - 1).x()))
                        .isEqualTo(stair.run());
            }
        });
    }

    @Test
    void the_rise_is_the_one_at_the_landing_point() {
        STAIRS.hold(stair -> assertThat(stair.site().totalRise(stair.landing()))
                .isEqualTo(stair.flight().totalRise()));
    }

    @Test
    void no_part_of_the_flight_reaches_out_of_the_space_taken() {
        STAIRS.hold(stair -> {
            Length farthest = stair.headerFace().minus(stair.spaceTaken());
            assertThat(farthest)
                    .isEqualTo(Length.min(
                            stair.nosing(1).x(), stair.riserThickness().negated()));
        });
    }
}
