package pitchboard.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class QuadTest {
    private static final Quad UPRIGHT = Quad.of(new Box(10, 10, 20, 5));

    @Test
    void boxes_that_share_only_an_edge_do_not_overlap() {
        assertThat(UPRIGHT.overlaps(Quad.of(new Box(30, 10, 5, 5)))).isFalse();
        assertThat(UPRIGHT.overlaps(Quad.of(new Box(10, 15, 20, 5)))).isFalse();
    }

    @Test
    void boxes_that_share_an_area_overlap_whichever_is_asked() {
        Quad other = Quad.of(new Box(29, 14, 5, 5));
        assertThat(UPRIGHT.overlaps(other)).isTrue();
        assertThat(other.overlaps(UPRIGHT)).isTrue();
    }

    @Test
    void a_small_box_inside_a_large_one_overlaps_it() {
        assertThat(UPRIGHT.overlaps(Quad.of(new Box(15, 11, 1, 1)))).isTrue();
    }

    @Test
    void a_turned_rectangle_can_pass_a_corner_that_its_upright_box_covers() {
        Quad turned = Quad.turned(Spot.of(0, 20), 45, 0, 0, 30, 3);
        assertThat(turned.box().overlaps(UPRIGHT.box())).isTrue();
        assertThat(turned.overlaps(Quad.of(new Box(18, 12, 4, 3)))).isFalse();
        assertThat(turned.overlaps(Quad.of(new Box(8, 8, 4, 3)))).isTrue();
    }

    @Test
    void a_stroke_crosses_when_it_passes_through_the_inside() {
        assertThat(UPRIGHT.isCrossedBy(Spot.of(0, 0), Spot.of(40, 25))).isTrue();
        assertThat(UPRIGHT.isCrossedBy(Spot.of(0, 12), Spot.of(100, 12))).isTrue();
    }

    @Test
    void a_stroke_along_an_edge_or_past_a_corner_does_not_cross() {
        assertThat(UPRIGHT.isCrossedBy(Spot.of(0, 10), Spot.of(100, 10))).isFalse();
        assertThat(UPRIGHT.isCrossedBy(Spot.of(0, 15), Spot.of(9, 0))).isFalse();
        assertThat(UPRIGHT.isCrossedBy(Spot.of(28, 20), Spot.of(40, 12))).isFalse();
    }
}
