package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.Samples;
import pitchboard.Shapes;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

final class SquarenessTest {
    /** 40 wide, 12 steps of 12 1/2 along the edge: the root of 40² + 150². */
    @Test
    void it_is_the_diagonal_of_width_and_slope() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105)).stair(14, Length.inches(10));
        assertThat(Squareness.diagonal(stair)).isEqualTo(Length.diagonal(Length.inches(40), Length.inches(150)));
    }

    @Test
    void it_is_the_distance_in_space_from_first_to_last_corner() {
        Samples.anyStairs(1_000).hold(stair -> {
            int last = stair.treads();
            double along = Shapes.mm(stair.riserCut(last).minus(stair.riserCut(1)));
            double up = Shapes.mm(stair.levelCut(last).minus(stair.levelCut(1)));
            double across = Shapes.mm(StringerSpacing.of(stair.brief()).overall());
            assertThat(Shapes.mm(Squareness.diagonal(stair)))
                    .isCloseTo(Math.sqrt(along * along + up * up + across * across), within(1e-6));
        });
    }
}
