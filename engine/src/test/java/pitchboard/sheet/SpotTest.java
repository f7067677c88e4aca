package pitchboard.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class SpotTest {
    @Test
    void a_spot_keeps_four_decimals_and_no_minus_zero() {
        assertThat(Spot.of(1.00004999, -0.00001)).isEqualTo(Spot.of(1, 0));
        assertThat(1 / Spot.of(-0.00001, 0).x()).isPositive();
    }

    @Test
    void directions_turn_anticlockwise_and_up_the_page() {
        Spot from = Spot.of(10, 10);
        assertThat(from.toward(0, 5)).isEqualTo(Spot.of(15, 10));
        assertThat(from.toward(90, 5)).isEqualTo(Spot.of(10, 5));
        assertThat(from.directionTo(Spot.of(10, 5))).isEqualTo(90);
        assertThat(from.directionTo(Spot.of(5, 15))).isEqualTo(-135);
    }

    @Test
    void boxes_are_cut_off_boxes_without_loss() {
        Box box = new Box(8, 8, 100, 50);
        assertThat(box.leftPart(30)).isEqualTo(new Box(8, 8, 30, 50));
        assertThat(box.withoutLeft(30)).isEqualTo(new Box(38, 8, 70, 50));
        assertThat(box.bottomPart(10)).isEqualTo(new Box(8, 48, 100, 10));
        assertThat(box.withoutBottom(10)).isEqualTo(new Box(8, 8, 100, 40));
    }
}
