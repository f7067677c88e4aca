package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pitchboard.Shapes.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.Samples;
import pitchboard.site.Overhead;

/** The tightest place under what is above a flight, against a walk in small steps under all of it. */
final class HeadroomLawsTest {
    private static final int STEPS = 2_000;
    private static final double FARTHEST_MM = 20_000;

    private static final Samples<Stair> STAIRS = Samples.anyStairs(2_000);

    @Test
    void nobody_who_walks_under_it_finds_a_tighter_place() {
        STAIRS.hold(stair -> {
            List<Overhead> overheads = stair.site().overheads();
            assertThat(stair.headroom().isPresent()).isNotEqualTo(overheads.isEmpty());
            stair.headroom().ifPresent(headroom -> {
                double tightest = overheads.stream()
                        .mapToDouble(overhead -> tightestUnder(stair, overhead))
                        .min()
                        .orElseThrow();
                assertThat(mm(headroom.clear())).isCloseTo(tightest, within(1e-6));
            });
        });
    }

    private static double tightestUnder(Stair stair, Overhead overhead) {
        double underside = mm(overhead.underside().value()) - mm(stair.site().lowerFinish());
        double near = mm(overhead.from());
        double far = overhead.to().map(to -> mm(to)).orElse(FARTHEST_MM);
        double tightest = Double.MAX_VALUE;
        for (int i = 0; i <= STEPS; i++) {
            double fromHeader = near + (far - near) * i / STEPS;
            tightest = Math.min(tightest, underside - floor(stair, fromHeader));
        }
        return tightest;
    }

    /** Level below, the slope through the nosings, level above; measured from the header. */
    private static double floor(Stair stair, double fromHeader) {
        double run = mm(stair.flight().run());
        double rise = mm(stair.flight().totalRise()) / stair.flight().risers();
        double treadFront = mm(stair.brief().treads().width()) + mm(stair.riserThickness());
        double firstNosing = (stair.treads() - 1) * run + treadFront;
        if (fromHeader > firstNosing + 1e-9) {
            return 0;
        }
        double climbed = rise + (firstNosing - fromHeader) * rise / run;
        return Math.min(climbed, mm(stair.flight().totalRise()));
    }
}
