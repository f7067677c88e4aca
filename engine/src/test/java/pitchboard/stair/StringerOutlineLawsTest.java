package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pitchboard.Shapes.FAR;
import static pitchboard.Shapes.box;
import static pitchboard.Shapes.line;
import static pitchboard.Shapes.mm;
import static pitchboard.Shapes.point;
import static pitchboard.Shapes.polygon;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import pitchboard.Samples;
import pitchboard.Shapes;
import pitchboard.brief.HeadFixing;
import pitchboard.plane.Point;

/** A stringer's outline against an independent geometry library, on random stairs that can be built. */
final class StringerOutlineLawsTest {
    private static final double MICROMETRE = 1e-3;

    private static final Samples<Stair> STAIRS = Samples.buildableStairs(4_000);

    @Test
    void there_are_stairs_to_look_at() {
        assertThat(STAIRS.all()).hasSizeGreaterThan(1_500);
    }

    @Test
    void it_is_one_simple_shape_and_no_corner_stands_twice() {
        STAIRS.hold(stair -> {
            List<Point> corners = new StringerShape(stair).outline().corners();
            assertThat(new HashSet<>(corners)).hasSameSizeAs(corners);
            assertThat(outline(stair).isValid()).isTrue();
        });
    }

    @Test
    void it_is_what_the_saw_leaves_of_a_board() {
        STAIRS.hold(stair -> {
            Geometry sawn = SawnStringer.of(stair);
            Polygon outline = outline(stair);
            assertThat(outline.getArea()).isCloseTo(sawn.getArea(), within(0.1));
            assertThat(Shapes.areaOfDifference(outline, sawn)).isLessThan(0.1);
        });
    }

    /** The body left is as deep as the throat says from every corner where a riser cut meets the level cut below it. */
    @Test
    void the_throat_is_the_distance_from_the_inner_corners_to_the_bottom_edge() {
        STAIRS.hold(stair -> {
            StringerShape shape = new StringerShape(stair);
            Geometry bottomEdge = bottomEdge(stair);
            for (int step = 1; step < stair.treads(); step++) {
                Geometry corner = point(mm(stair.riserCut(step + 1)), mm(stair.levelCut(step)));
                assertThat(corner.distance(outline(stair).getBoundary())).isLessThan(MICROMETRE);
                assertThat(corner.distance(bottomEdge)).isCloseTo(mm(shape.throat()), within(MICROMETRE));
            }
        });
    }

    private static Geometry bottomEdge(Stair stair) {
        double slope = mm(stair.rise()) / mm(stair.run());
        double atOrigin =
                mm(stair.levelCut(1)) - mm(stair.brief().stringers().stock().depth()) * Math.sqrt(1 + slope * slope);
        return line(-FAR, atOrigin - FAR * slope, FAR, atOrigin + FAR * slope);
    }

    @Test
    void the_contact_is_where_what_carries_the_head_lies_against_the_header() {
        STAIRS.hold(stair -> {
            double contact = bearing(stair).intersection(header(stair)).getLength();
            assertThat(mm(new StringerShape(stair).contactHeight())).isCloseTo(contact, within(MICROMETRE));
        });
    }

    private static Geometry header(Stair stair) {
        double face = mm(stair.headerFace());
        double top = mm(stair.flight().totalRise()) - mm(stair.site().head().decking());
        return line(face, top - mm(stair.site().head().depth()), face, top);
    }

    /** The face of hanger board or ledger, or the plumb cut of the stringer itself. */
    private static Geometry bearing(Stair stair) {
        double face = mm(stair.headerFace());
        double top = mm(stair.rise()) * stair.treads() - mm(stair.treadThickness());
        HeadFixing fixing = stair.brief().headFixing();
        if (fixing instanceof HeadFixing.HangerBoard board) {
            return line(face, top - mm(board.height()), face, top);
        }
        Geometry plumbCut = outline(stair).intersection(box(face - 1e-7, -FAR, FAR, FAR));
        if (fixing instanceof HeadFixing.Ledger ledger) {
            double sitsAt = plumbCut.getEnvelopeInternal().getMinY();
            return line(face, sitsAt - mm(ledger.height()), face, sitsAt);
        }
        return line(
                face,
                plumbCut.getEnvelopeInternal().getMinY(),
                face,
                plumbCut.getEnvelopeInternal().getMaxY());
    }

    private static Polygon outline(Stair stair) {
        return polygon(new StringerShape(stair).outline());
    }
}
