package pitchboard.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;

final class HatchTest {
    /** A notch at the lower left. */
    private static final List<Spot> NOTCHED = List.of(
            Spot.of(20, 20), Spot.of(60, 20), Spot.of(60, 50), Spot.of(40, 50), Spot.of(40, 35), Spot.of(20, 35));

    private final Draft draft = new Draft("test", "Test", new Box(0, 0, 100, 100));

    private static boolean isInOrOn(Spot spot) {
        boolean aboveNotch = new Box(20, 20, 40, 15).inset(-0.001).contains(spot);
        boolean besideNotch = new Box(40, 20, 20, 30).inset(-0.001).contains(spot);
        return aboveNotch || besideNotch;
    }

    @ParameterizedTest
    @EnumSource(Material.class)
    void hatching_stays_inside_a_notched_outline(Material material) {
        new Hatch(draft.pencil()).inside(NOTCHED, material);
        assertThat(draft.marks()).hasSizeGreaterThan(8);
        for (Mark mark : draft.marks()) {
            if (mark instanceof Mark.Line line) {
                Spot middle = line.spots().get(0).midTo(line.spots().get(1));
                assertThat(List.of(line.spots().get(0), middle, line.spots().get(1)))
                        .allMatch(HatchTest::isInOrOn);
            } else if (mark instanceof Mark.Disc dot) {
                assertThat(isInOrOn(dot.centre())).isTrue();
            }
        }
    }

    @Test
    void hatching_across_the_grain_covers_the_area_at_its_spacing() {
        new Hatch(draft.pencil()).inside(NOTCHED, Material.TIMBER_ACROSS);
        double length = draft.marks().stream()
                .map(mark -> ((Mark.Line) mark).spots())
                .mapToDouble(spots -> spots.get(0).distanceTo(spots.get(1)))
                .sum();
        // Area over spacing: (40 × 15 + 20 × 15) / 1.8, within the two border lines of each stretch.
        assertThat(length).isBetween(900 / 1.8 - 40, 900 / 1.8 + 40);
    }

    @Test
    void inside_is_found_by_counting_edges() {
        assertThat(Hatch.isInside(NOTCHED, Spot.of(50, 45))).isTrue();
        assertThat(Hatch.isInside(NOTCHED, Spot.of(30, 45))).isFalse();
        assertThat(Hatch.isInside(NOTCHED, Spot.of(10, 25))).isFalse();
    }
}
