package pitchboard.strength.elements.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import pitchboard.strength.elements.Boards;

final class MesherTest {
    /** Stringers of many shapes, some with notches at foot and head, fine and coarse. */
    @RepeatedTest(40)
    void any_notched_board_is_filled_once_with_sound_triangles(RepetitionInfo repetition) {
        Random chance = new Random(repetition.getCurrentRepetition());
        Polygon outline = notchedBoard(chance);
        while (!outline.troubles().isEmpty()) {
            outline = notchedBoard(chance);
        }
        double atCorners = 0.5 + 10 * chance.nextDouble();
        Fineness fineness =
                new Fineness(atCorners + 15 + 75 * chance.nextDouble(), atCorners, 0.3 + 0.7 * chance.nextDouble());
        Mesh mesh = Mesher.mesh(outline, fineness, outline.inwardCorners());
        check(outline, mesh);
        check(outline, mesh.refined());
    }

    @Test
    void a_steep_board_with_a_thin_toe_is_filled_too() {
        Polygon outline = new Polygon(new Boards.Stringer(10, 3, 6, 9.25).outline());
        Mesh mesh = Mesher.mesh(outline, new Fineness(60, 2, 0.7), outline.inwardCorners());
        check(outline, mesh);
    }

    @Test
    void triangles_are_small_where_the_board_is_cut_and_large_elsewhere() {
        Polygon outline = new Polygon(new Boards.Stringer(7.5, 10, 10, 11.25).outline());
        Mesh graded = Mesher.mesh(outline, new Fineness(110, 0.5, 1), outline.inwardCorners());
        for (Xy corner : outline.inwardCorners()) {
            assertThat(shortestSideAt(graded, corner)).isLessThan(1);
        }
        Mesh even = Mesher.mesh(outline, Fineness.uniform(0.5 * 25.4), List.of());
        assertThat(graded.nodes()).isLessThan(even.nodes() / 4);
    }

    @Test
    void the_same_outline_gives_the_same_mesh() {
        Polygon outline = new Polygon(new Boards.Stringer(7, 11, 5, 11.25).outline());
        Mesh one = Mesher.mesh(outline, new Fineness(60, 2, 0.7), outline.inwardCorners());
        Mesh two = Mesher.mesh(outline, new Fineness(60, 2, 0.7), outline.inwardCorners());
        assertThat(two.x()).isEqualTo(one.x());
        assertThat(two.elements()).isEqualTo(one.elements());
    }

    @Test
    void an_outline_that_crosses_itself_is_refused_with_its_sides() {
        Polygon bow = new Polygon(List.of(new Xy(0, 0), new Xy(10, 10), new Xy(10, 0), new Xy(0, 10)));
        assertThat(bow.troubles()).containsExactly("side 1 of the outline meets side 3");
        assertThatThrownBy(() -> Mesher.mesh(bow, Fineness.uniform(1), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("side 1 of the outline meets side 3");
    }

    @Test
    void an_outline_that_touches_or_folds_back_is_refused() {
        Polygon touching =
                new Polygon(List.of(new Xy(0, 0), new Xy(10, 0), new Xy(10, 10), new Xy(5, 0), new Xy(0, 10)));
        assertThat(touching.troubles()).isNotEmpty();
        Polygon folded = new Polygon(List.of(new Xy(0, 0), new Xy(10, 0), new Xy(5, 0), new Xy(5, 5)));
        assertThat(folded.troubles()).isNotEmpty();
        Polygon twice = new Polygon(List.of(new Xy(0, 0), new Xy(0, 0), new Xy(5, 0), new Xy(5, 5)));
        assertThat(twice.troubles()).singleElement().asString().contains("stands twice");
        Polygon far = new Polygon(List.of(new Xy(0, 0), new Xy(Double.NaN, 0), new Xy(5, 5)));
        assertThat(far.troubles()).singleElement().asString().contains("corner 2");
    }

    private static void check(Polygon outline, Mesh mesh) {
        double area = 0;
        double leastAngle = 180;
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            double own = area(mesh, triangle);
            assertThat(own).isPositive();
            area += own;
            leastAngle = Math.min(leastAngle, leastAngle(mesh, triangle));
        }
        assertThat(area).isCloseTo(outline.area(), within(1e-9 * outline.area()));
        assertThat(leastAngle).isGreaterThan(14);
        for (Xy corner : outline.corners()) {
            assertThat(nearestNode(mesh, corner)).isLessThan(1e-9);
        }
        // Euler's formula for a mesh without holes: corners + middles - ... = nodes; and the rim closes.
        int[][] rim = mesh.rim();
        int sides = (3 * mesh.triangles() + rim.length) / 2;
        int corners = mesh.nodes() - sides;
        assertThat(corners - sides + mesh.triangles()).isEqualTo(1);
        double length = 0;
        for (int[] side : rim) {
            length += at(mesh, side[0]).distanceTo(at(mesh, side[1]));
        }
        assertThat(length).isCloseTo(perimeter(outline), within(1e-9 * length));
    }

    private static double perimeter(Polygon outline) {
        double length = 0;
        for (int i = 0; i < outline.size(); i++) {
            length += outline.corner(i).distanceTo(outline.corner(i + 1));
        }
        return length;
    }

    private static Xy at(Mesh mesh, int node) {
        return new Xy(mesh.x()[node], mesh.y()[node]);
    }

    private static double area(Mesh mesh, int triangle) {
        Xy a = at(mesh, mesh.node(triangle, 0));
        Xy b = at(mesh, mesh.node(triangle, 1));
        Xy c = at(mesh, mesh.node(triangle, 2));
        return ((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x())) / 2;
    }

    private static double leastAngle(Mesh mesh, int triangle) {
        double least = 180;
        for (int k = 0; k < 3; k++) {
            Xy a = at(mesh, mesh.node(triangle, k));
            Xy b = at(mesh, mesh.node(triangle, (k + 1) % 3));
            Xy c = at(mesh, mesh.node(triangle, (k + 2) % 3));
            double dot = (b.x() - a.x()) * (c.x() - a.x()) + (b.y() - a.y()) * (c.y() - a.y());
            least = Math.min(least, Math.toDegrees(Math.acos(dot / (a.distanceTo(b) * a.distanceTo(c)))));
        }
        return least;
    }

    private static double nearestNode(Mesh mesh, Xy place) {
        double nearest = Double.MAX_VALUE;
        for (int node = 0; node < mesh.nodes(); node++) {
            nearest = Math.min(nearest, at(mesh, node).distanceTo(place));
        }
        return nearest;
    }

    private static double shortestSideAt(Mesh mesh, Xy corner) {
        double shortest = Double.MAX_VALUE;
        for (int[] side : mesh.rim()) {
            if (at(mesh, side[0]).distanceTo(corner) < 1e-9) {
                shortest = Math.min(shortest, at(mesh, side[0]).distanceTo(at(mesh, side[1])));
            }
        }
        return shortest;
    }

    /** A saw-tooth with, by chance, a notch let into the toe and one let into the back of the head. */
    private static Polygon notchedBoard(Random chance) {
        double rise = 5.5 + 3 * chance.nextDouble();
        double run = 8 + 6 * chance.nextDouble();
        Boards.Stringer board = new Boards.Stringer(rise, run, 1 + chance.nextInt(12), 9.25 + 4 * chance.nextDouble());
        List<Xy> corners = new ArrayList<>(board.outline());
        if (chance.nextBoolean()) {
            Xy toe = corners.remove(0);
            corners.add(0, new Xy(toe.x(), toe.y() + 40));
            corners.add(new Xy(toe.x() + 60, toe.y()));
            corners.add(new Xy(toe.x() + 60, toe.y() + 40));
        }
        int top = 2 * board.steps();
        if (chance.nextBoolean()) {
            Xy back = board.inner(board.steps() - 1);
            corners.set(top, new Xy(back.x() - 38, back.y()));
            corners.add(top + 1, new Xy(back.x() - 38, back.y() - 70));
            corners.add(top + 2, new Xy(back.x(), back.y() - 70));
        }
        return new Polygon(corners);
    }
}
