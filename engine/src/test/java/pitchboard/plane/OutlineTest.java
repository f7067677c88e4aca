package pitchboard.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Length;

final class OutlineTest {
    private static final Point A = at(0, 0);
    private static final Point B = at(4, 0);
    private static final Point C = at(4, 3);

    private static Point at(long x, long y) {
        return Point.of(Length.inches(x), Length.inches(y));
    }

    @Test
    void a_corner_that_repeats_the_one_before_it_is_left_out() {
        assertThat(Outline.through(List.of(A, A, B, B, C))).isEqualTo(new Outline(List.of(A, B, C)));
    }

    @Test
    void a_last_corner_that_repeats_the_first_is_left_out() {
        assertThat(Outline.through(List.of(A, B, C, A, A))).isEqualTo(new Outline(List.of(A, B, C)));
    }

    @Test
    void two_corners_make_no_outline() {
        assertThatIllegalArgumentException().isThrownBy(() -> Outline.through(List.of(A, B, A)));
    }

    @Test
    void it_reaches_from_its_least_to_its_greatest_coordinate() {
        Outline outline = new Outline(List.of(A, B, C));
        assertThat(outline.least(Point::y)).isEqualTo(Length.ZERO);
        assertThat(outline.greatest(Point::x)).isEqualTo(Length.inches(4));
    }

    @Test
    void moving_it_moves_every_corner() {
        Outline moved = new Outline(List.of(A, B, C)).mapped(corner -> corner.shifted(Length.inches(1), Length.ZERO));
        assertThat(moved).isEqualTo(new Outline(List.of(at(1, 0), at(5, 0), at(5, 3))));
    }
}
