package pitchboard.rules.kinds.evenness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.StairFixtures;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

final class SeriesTest {
    private static Series series(String millimetres) {
        return new Series(Arrays.stream(millimetres.split(" ", -1))
                .map(size -> Length.mm(Integer.parseInt(size)))
                .toList());
    }

    /** Worked by hand: a slow drift is far apart and near to its neighbours, two errors about the plan are the reverse. */
    @ParameterizedTest
    @CsvSource({
        "180 180 180, 0, 0, 0",
        "176 178 180 182 184, 8, 2, 4",
        "180 184 176 180, 8, 8, 4",
        "165 180 180, 15, 15, 15",
        "180, 0, 0, 0",
    })
    void the_three_ways_to_be_uneven_are_told_apart(String sizes, int spread, int change, int deviation) {
        Series series = series(sizes);
        assertThat(series.spread()).isEqualTo(Length.mm(spread));
        assertThat(series.change()).isEqualTo(Length.mm(change));
        assertThat(series.deviation(Length.mm(180))).isEqualTo(Length.mm(deviation));
    }

    @Test
    void neighbours_are_never_farther_apart_than_all_and_all_never_more_than_twice_as_far_as_from_the_plan() {
        Random random = new Random(1);
        for (int i = 0; i < 500; i++) {
            List<Length> sizes = new ArrayList<>();
            int steps = 1 + random.nextInt(20);
            for (int step = 0; step < steps; step++) {
                sizes.add(Length.mm(170 + random.nextInt(21)));
            }
            Series series = new Series(sizes);
            assertThat(series.change()).isLessThanOrEqualTo(series.spread());
            assertThat(series.spread())
                    .isLessThanOrEqualTo(series.deviation(Length.mm(180)).times(2));
            Collections.reverse(sizes);
            assertThat(new Series(sizes).change()).isEqualTo(series.change());
        }
    }

    @Test
    void a_design_is_even_but_for_a_top_run_that_the_floors_edge_cuts_short() {
        Stair stair = StairFixtures.stair("");
        assertThat(Series.rises(stair).spread()).isEqualTo(Length.ZERO);
        assertThat(Series.rises(stair).sizes()).hasSize(12).containsOnly(Length.inches(7, 1, 2));
        Series runs = Series.runs(stair, stair.projection().plus(Length.inches(0, 1, 8)));
        assertThat(runs.sizes()).hasSize(11).endsWith(Length.inches(9, 7, 8));
        assertThat(runs.spread()).isEqualTo(Length.inches(0, 1, 8));
    }

    /** With one tread below the floor there is one run, and nothing to be unlike. */
    @Test
    void a_single_run_is_even() {
        Stair stair = StairFixtures.stair("risers 2; total rise 14 in");
        assertThat(Series.runs(stair, Length.ZERO).spread()).isEqualTo(Length.ZERO);
    }

    @Test
    void nothing_is_no_flight() {
        assertThatThrownBy(() -> new Series(List.of())).hasMessage("a flight has one step at least");
    }
}
