package pitchboard.sheet.tiling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;

final class ClipTest {
    private final Clip clip = new Clip(new Box(10, 10, 20, 20));

    @Test
    void a_line_through_the_box_keeps_its_middle() {
        assertThat(clip.line(List.of(Spot.of(0, 20), Spot.of(40, 20))))
                .containsExactly(List.of(Spot.of(10, 20), Spot.of(30, 20)));
        assertThat(clip.line(List.of(Spot.of(0, 0), Spot.of(40, 40))))
                .containsExactly(List.of(Spot.of(10, 10), Spot.of(30, 30)));
    }

    @Test
    void a_line_inside_is_kept_whole_and_one_outside_is_gone() {
        List<Spot> inside = List.of(Spot.of(12, 12), Spot.of(20, 25), Spot.of(28, 12));
        assertThat(clip.line(inside)).containsExactly(inside);
        assertThat(clip.line(List.of(Spot.of(0, 5), Spot.of(40, 5)))).isEmpty();
        assertThat(clip.line(List.of(Spot.of(0, 25), Spot.of(8, 41)))).isEmpty();
    }

    @Test
    void a_line_that_leaves_and_comes_back_becomes_two() {
        assertThat(clip.line(List.of(Spot.of(12, 20), Spot.of(40, 20), Spot.of(40, 25), Spot.of(12, 25))))
                .containsExactly(List.of(Spot.of(12, 20), Spot.of(30, 20)), List.of(Spot.of(30, 25), Spot.of(12, 25)));
    }

    @Test
    void an_area_over_a_corner_keeps_what_is_inside() {
        List<Spot> kept = clip.area(new Box(0, 0, 15, 15).corners());
        assertThat(kept).containsExactlyInAnyOrder(Spot.of(10, 10), Spot.of(15, 10), Spot.of(15, 15), Spot.of(10, 15));
    }

    @Test
    void an_area_round_the_box_becomes_the_box_and_one_beside_it_nothing() {
        assertThat(clip.area(new Box(0, 0, 50, 50).corners()))
                .containsExactlyInAnyOrderElementsOf(new Box(10, 10, 20, 20).corners());
        assertThat(clip.area(new Box(40, 10, 5, 5).corners())).isEmpty();
    }
}
