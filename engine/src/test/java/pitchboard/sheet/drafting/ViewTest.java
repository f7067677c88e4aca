package pitchboard.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;

final class ViewTest {
    private static final Box ROOM = new Box(20, 30, 200, 100);

    private static List<Point> box(Length width, Length height) {
        return List.of(Point.of(Length.ZERO, Length.ZERO), Point.of(width, height));
    }

    @Test
    void a_foot_is_an_inch_at_one_inch_to_the_foot_and_up_is_up() {
        View view = View.of(Scale.INCH.get(4), Spot.of(50, 100));
        assertThat(view.scale().name()).isEqualTo("1 in = 1 ft");
        assertThat(view.at(Length.feet(1), Length.feet(2))).isEqualTo(Spot.of(75.4, 49.2));
    }

    @Test
    void the_largest_scale_that_fits_is_chosen_and_the_drawing_stands_in_the_middle() {
        View view = View.fitting(ROOM, box(Length.mm(1990), Length.mm(500)), Scale.METRIC);
        assertThat(view.scale()).isEqualTo(Scale.oneTo(10));
        assertThat(view.around(box(Length.mm(1990), Length.mm(500)))).isEqualTo(new Box(20.5, 55, 199, 50));
    }

    @Test
    void a_drawing_that_fits_exactly_fits() {
        assertThat(View.fitting(ROOM, box(Length.mm(2000), Length.mm(1000)), Scale.METRIC)
                        .scale()
                        .name())
                .isEqualTo("1:10");
        assertThat(View.fitting(ROOM, box(Length.mm(2001), Length.mm(1000)), Scale.METRIC)
                        .scale()
                        .name())
                .isEqualTo("1:20");
    }

    @Test
    void a_drawing_too_large_for_every_scale_gets_one_that_fits() {
        View view = View.fitting(ROOM, box(Length.mm(1_000_000), Length.mm(1000)), Scale.METRIC);
        assertThat(view.scale()).isEqualTo(Scale.oneTo(5000));
    }

    @Test
    void a_point_or_a_plain_line_still_has_a_view() {
        assertThat(View.fitting(ROOM, box(Length.ZERO, Length.mm(50)), Scale.METRIC)
                        .scale())
                .isEqualTo(Scale.TRUE_SIZE);
    }

    @Test
    void turned_by_minus_the_pitch_a_slope_lies_level() {
        View view = View.of(Scale.TRUE_SIZE, Spot.of(10, 10)).turned(-Math.toDegrees(Math.atan2(3, 4)));
        Spot end = view.at(Length.mm(40), Length.mm(30));
        assertThat(end.x()).isEqualTo(60, within(1e-3));
        assertThat(end.y()).isEqualTo(10, within(1e-3));
    }

    @Test
    void inch_jobs_get_an_inch_rule_and_millimetre_jobs_a_metric_one() {
        assertThat(Scale.of(Tape.SIXTEENTHS)).isEqualTo(Scale.INCH);
        assertThat(Scale.of(Tape.MILLIMETRES)).isEqualTo(Scale.METRIC);
        for (List<Scale> scales : List.of(Scale.INCH, Scale.METRIC)) {
            assertThat(scales).extracting(Scale::factor).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        }
    }
}
