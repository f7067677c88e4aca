package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pitchboard.Shapes.mm;
import static pitchboard.Shapes.polygon;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pitchboard.Samples;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/** A stringer laid on its board, on random stairs that can be built. */
final class StringerLayoutLawsTest {
    private static final double MICROMETRE = 1e-3;

    private static final Samples<Stair> STAIRS = Samples.buildableStairs(4_000);

    @Test
    void the_whole_outline_lies_on_the_board() {
        STAIRS.hold(stair -> {
            Length depth = stair.brief().stringers().stock().depth();
            assertThat(StringerLayout.of(stair).outline().corners()).allSatisfy(corner -> {
                assertThat(corner.y().isAtMost(Length.ZERO)).isTrue();
                assertThat(corner.y().isAtLeast(depth.negated())).isTrue();
                assertThat(corner.x().isAtLeast(Length.ZERO)).isTrue();
            });
        });
    }

    @Test
    void every_step_touches_the_boards_top_edge_at_its_mark() {
        STAIRS.hold(stair -> {
            StringerLayout layout = StringerLayout.of(stair);
            for (int step = 1; step <= stair.treads(); step++) {
                Point corner = Point.of(stair.riserCut(step), stair.levelCut(step));
                assertThat(layout.onBoard(corner)).isEqualTo(Point.of(layout.cornerMark(step), Length.ZERO));
                assertThat(layout.outline().corners()).contains(layout.onBoard(corner));
            }
        });
    }

    @Test
    void the_outline_begins_at_the_datum() {
        STAIRS.hold(stair ->
                assertThat(StringerLayout.of(stair).outline().least(Point::x)).isEqualTo(Length.ZERO));
    }

    /** Turned by an independent library, the outline of the side view is as long and as big. */
    @Test
    void extent_and_area_are_those_of_the_outline_of_the_side_view() {
        STAIRS.hold(stair -> {
            StringerLayout layout = StringerLayout.of(stair);
            Geometry upright = polygon(layout.shape().outline());
            double slope = Math.atan2(mm(stair.rise()), mm(stair.run()));
            Geometry turned = AffineTransformation.rotationInstance(-slope).transform(upright);
            assertThat(mm(layout.extent()))
                    .isCloseTo(turned.getEnvelopeInternal().getWidth(), within(MICROMETRE));
            assertThat(polygon(layout.outline()).getArea()).isCloseTo(upright.getArea(), within(0.1));
        });
    }

    @Test
    void the_board_needed_is_the_extent_and_the_trim_at_both_ends() {
        STAIRS.hold(stair -> {
            StringerLayout layout = StringerLayout.of(stair);
            Length trim = stair.brief().stringers().trim();
            assertThat(layout.boardNeeded().minus(trim).minus(trim)).isEqualTo(layout.extent());
        });
    }

    @Test
    void every_mark_is_rounded_once_and_none_of_them_drifts() {
        STAIRS.hold(stair -> {
            Length graduation = stair.brief().tape().graduation().step();
            List<RunningMark> marks = StringerLayout.of(stair).marks();
            assertThat(marks).hasSize(stair.treads());
            assertThat(marks).allSatisfy(mark -> {
                assertThat(mark.at().givenUp().abs().times(2).isAtMost(graduation))
                        .isTrue();
                assertThat(mark.at().line().over(graduation).isWhole()).isTrue();
            });
        });
    }

    @Test
    void corner_marks_lie_on_the_board_that_is_cut() {
        STAIRS.hold(stair -> {
            StringerLayout layout = StringerLayout.of(stair);
            assertThat(layout.marks())
                    .allSatisfy(mark -> assertThat(mark.at().exact()).isBetween(Length.ZERO, layout.extent()));
        });
    }

    /** In a low flight both are corners at the seat instead. */
    @Test
    void heel_and_head_marks_are_the_ends_of_the_bottom_edge() {
        STAIRS.hold(stair -> {
            StringerLayout layout = StringerLayout.of(stair);
            Point heel = layout.onBoard(layout.shape().heel());
            Point head = layout.onBoard(layout.shape().headEnd());
            assertThat(layout.outline().corners()).contains(heel, head);
            assertThat(layout.heelMark().exact()).isEqualTo(heel.x());
            assertThat(layout.headMark().exact()).isEqualTo(head.x());
            Length bottom = layout.shape().boardDepth().negated();
            boolean low = layout.shape().headEnd().y().equals(stair.seat());
            assertThat(List.of(heel.y(), head.y()))
                    .allMatch(y -> low || y.equals(bottom))
                    .allMatch(y -> y.isAtLeast(bottom));
        });
    }
}
