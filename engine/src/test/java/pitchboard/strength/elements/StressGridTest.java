package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.strength.elements.mesh.Fineness;
import pitchboard.strength.elements.mesh.Xy;

/** A plain board on a slope of 3 in 4, pulled at its ends or bent by couples: the stress is known everywhere. */
final class StressGridTest {
    private static final double LENGTH = 600;
    private static final double DEPTH = 100;

    /** From the board to where it stands. */
    private static Xy stand(double along, double across) {
        return new Xy(0.8 * along - 0.6 * across, 0.6 * along + 0.8 * across);
    }

    /** A couple at the far end: stress by sigma = 12 across each end, from -12 to +12, with the near end held flat. */
    private static StressPicture bent() {
        Xy low = stand(LENGTH, 0);
        Xy high = stand(LENGTH, DEPTH);
        double pull = 12 * 40;
        EdgeLoad couple = new EdgeLoad(low, high, 0.8 * pull, 0.6 * pull, -0.8 * pull, -0.6 * pull);
        Plate plate = new Plate(
                List.of(stand(0, 0), low, high, stand(0, DEPTH)),
                40,
                new Orthotropic(11000, 550, 700, 0),
                new Xy(4, 3),
                List.of(Support.fixed(stand(0, 0), stand(0, DEPTH))),
                List.of(couple));
        Effort one = new Effort(Fineness.uniform(30), 1, 25);
        return ((PlateAnswer.Solved) Elements.solve(plate, one)).picture();
    }

    @Test
    void a_bent_board_is_stretched_at_one_edge_and_pressed_at_the_other() {
        StressGrid grid = bent().grid(10);
        int checked = 0;
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 20; column < grid.columns(); column++) {
                double stress = grid.along(row, column);
                Xy place = grid.at(row, column);
                double up = 0.8 * place.y() - 0.6 * place.x();
                assertThat(stress).isCloseTo(12 - 24 * up / DEPTH, within(0.02));
                checked++;
            }
        }
        assertThat(checked).isEqualTo(10 * 40);
    }

    @Test
    void the_column_of_a_place_leads_back_to_it() {
        StressGrid grid = bent().grid(10);
        assertThat(grid.columnAt(grid.at(3, 17))).isEqualTo(17);
        assertThat(grid.columnAt(stand(-500, 0))).isZero();
        assertThat(grid.columnAt(stand(5000, 0))).isEqualTo(grid.columns() - 1);
    }

    /** Around once, with the wood on the left, and as far as the outline is long. */
    @Test
    void the_rim_goes_around_the_board_once() {
        StressPicture picture = bent();
        int[] rim = picture.rim();
        double way = 0;
        double twice = 0;
        for (int i = 0; i < rim.length; i++) {
            Xy from = picture.moved(rim[i], 0);
            Xy to = picture.moved(rim[(i + 1) % rim.length], 0);
            way += from.distanceTo(to);
            twice += from.x() * to.y() - to.x() * from.y();
        }
        assertThat(way).isCloseTo(2 * (LENGTH + DEPTH), within(1e-6));
        assertThat(twice / 2).isCloseTo(LENGTH * DEPTH, within(1e-3));
    }
}
