package pitchboard.buying.need;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import pitchboard.Samples;
import pitchboard.measure.Length;
import pitchboard.parts.StringerLayout;
import pitchboard.plane.Outline;

/** Two stringers in one board, checked as polygons by the JTS library, on stairs made from seeds. */
final class NestingLawsTest {
    private static final Samples<pitchboard.stair.Stair> STAIRS = Samples.buildableStairs(150);
    private static final Length KERF = Length.inches(0, 1, 8);
    private static final GeometryFactory POLYGONS = new GeometryFactory();

    private static Nesting nesting(pitchboard.stair.Stair stair) {
        return Nesting.of(StringerLayout.of(stair).outline(), KERF);
    }

    private static Polygon polygon(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.corners()
                .forEach(corner -> ring.add(
                        new Coordinate(corner.x().approxMm(), corner.y().approxMm())));
        ring.add(ring.get(0));
        return POLYGONS.createPolygon(ring.toArray(Coordinate[]::new));
    }

    @Test
    void there_is_room_for_the_saw_between_them_in_every_direction() {
        STAIRS.hold(stair -> {
            Nesting nesting = nesting(stair);
            double apart = polygon(nesting.first()).distance(polygon(nesting.second()));
            assertThat(apart).isGreaterThanOrEqualTo(KERF.approxMm());
        });
    }

    /** A square about each corner instead of a circle, and tenths of a millimetre: little is given away. */
    @Test
    void a_kerf_and_a_half_less_and_the_saw_would_not_pass() {
        STAIRS.hold(stair -> {
            Nesting nesting = nesting(stair);
            Outline nearer = nesting.second()
                    .mapped(corner -> corner.shifted(KERF.times(3).dividedBy(2).negated(), Length.ZERO));
            double apart = polygon(nesting.first()).distance(polygon(nearer));
            assertThat(apart).isLessThan(KERF.approxMm());
        });
    }

    @Test
    void both_are_the_stringer_and_lie_in_its_board() {
        STAIRS.hold(stair -> {
            Outline stringer = StringerLayout.of(stair).outline();
            Nesting nesting = nesting(stair);
            for (Outline each : List.of(nesting.first(), nesting.second())) {
                assertThat(polygon(each).getArea())
                        .isCloseTo(polygon(stringer).getArea(), org.assertj.core.data.Offset.offset(1e-6));
                assertThat(each.least(pitchboard.plane.Point::y).approxMm())
                        .isCloseTo(
                                stringer.least(pitchboard.plane.Point::y).approxMm(),
                                org.assertj.core.data.Offset.offset(1e-9));
            }
            assertThat(nesting.first().least(pitchboard.plane.Point::x).isZero())
                    .isTrue();
            assertThat(nesting.second().least(pitchboard.plane.Point::x).isPositive())
                    .isTrue();
        });
    }

    /** Their slanting ends overlap, so a pair takes less board than two apart. */
    @Test
    void a_pair_is_shorter_than_two() {
        STAIRS.hold(stair -> {
            Length one = StringerLayout.of(stair).extent();
            assertThat(nesting(stair).extent()).isLessThan(one.times(2));
            assertThat(nesting(stair).extent()).isGreaterThan(one);
        });
    }
}
