package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.strength.elements.mesh.Fineness;
import pitchboard.strength.elements.mesh.Xy;

final class ElementsTest {
    private static final List<Xy> BOARD = List.of(new Xy(0, 0), new Xy(1000, 0), new Xy(1000, 100), new Xy(0, 100));
    private static final Support LEFT = Support.fixed(new Xy(0, 0), new Xy(0, 100));
    private static final EdgeLoad TOP = EdgeLoad.down(new Xy(0, 100), new Xy(1000, 100), 100);
    private static final Effort EFFORT = new Effort(Fineness.uniform(25), 1, 30);

    private static Plate plate(List<Xy> outline, double thickness, List<Support> supports, List<EdgeLoad> loads) {
        return new Plate(outline, thickness, Boards.douglasFir(), new Xy(1, 0), supports, loads);
    }

    private static List<String> reasons(Plate plate) {
        return ((PlateAnswer.CannotTell) Elements.solve(plate, EFFORT)).because();
    }

    @Test
    void every_trouble_is_told_at_once() {
        Plate plate = new Plate(
                BOARD,
                -1,
                new Orthotropic(11000, 0, 700, 0.3),
                new Xy(0, 0),
                List.of(Support.pin(new Xy(0, 0), new Xy(5, 5))),
                List.of(EdgeLoad.down(new Xy(3, 100), new Xy(3, 100), 5)));
        assertThat(reasons(plate)).hasSize(6);
        assertThat(reasons(plate)).anyMatch(each -> each.contains("thickness must be above 0 mm, got -1.0"));
        assertThat(reasons(plate)).anyMatch(each -> each.startsWith("support 1 does not lie on one side"));
        assertThat(reasons(plate)).anyMatch(each -> each.startsWith("load 1 has no length"));
    }

    @Test
    void nothing_that_holds_and_nothing_that_stands_there_are_told() {
        assertThat(reasons(plate(BOARD, 38, List.of(), List.of()))).hasSize(2);
    }

    @Test
    void a_board_that_can_slide_is_told() {
        List<Support> rollers =
                List.of(Support.roller(new Xy(0, 0), new Xy(50, 0)), Support.roller(new Xy(950, 0), new Xy(1000, 0)));
        assertThat(reasons(plate(BOARD, 38, rollers, List.of(TOP))))
                .singleElement()
                .asString()
                .startsWith("the supports let the board move");
    }

    @Test
    void a_board_that_can_turn_is_told() {
        List<Support> hinge = List.of(Support.pin(new Xy(0, 0), new Xy(50, 0)));
        assertThat(reasons(plate(BOARD, 38, hinge, List.of(TOP)))).hasSize(1);
    }

    @Test
    void too_fine_a_mesh_is_told() {
        Effort mad = new Effort(Fineness.uniform(0.05), 1, 30);
        PlateAnswer answer = Elements.solve(plate(BOARD, 38, List.of(LEFT), List.of(TOP)), mad);
        assertThat(((PlateAnswer.CannotTell) answer).because())
                .singleElement()
                .asString()
                .contains("20000 corners");
    }

    /** w L^4 / 8 E I and the shear's share, k w L² / 2 G A, within what the clamped end takes off. */
    @Test
    void a_plain_cantilever_sinks_like_one() {
        PlateAnswer.Solved solved =
                (PlateAnswer.Solved) Elements.solve(plate(BOARD, 38, List.of(LEFT), List.of(TOP)), EFFORT);
        Orthotropic wood = Boards.douglasFir();
        double bending = 0.1 * 1e12 / (8 * wood.alongMpa() * 38 * 1e6 / 12);
        double shear = 1.2 * 0.1 * 1e6 / (2 * wood.shearMpa() * 38 * 100);
        assertThat(solved.fallMm().finest()).isCloseTo(bending + shear, within(0.01 * bending));
        assertThat(solved.lowest().x()).isEqualTo(1000);
        assertThat(solved.reactions()).hasSize(1);
    }

    /** Corners clockwise, grain backwards: the same board. */
    @Test
    void the_way_round_does_not_matter() {
        List<Xy> clockwise = List.of(BOARD.get(3), BOARD.get(2), BOARD.get(1), BOARD.get(0));
        Plate turned = new Plate(clockwise, 38, Boards.douglasFir(), new Xy(-2, 0), List.of(LEFT), List.of(TOP));
        double there =
                ((PlateAnswer.Solved) Elements.solve(turned, EFFORT)).fallMm().finest();
        double here = ((PlateAnswer.Solved) Elements.solve(plate(BOARD, 38, List.of(LEFT), List.of(TOP)), EFFORT))
                .fallMm()
                .finest();
        assertThat(there).isCloseTo(here, within(1e-3 * here));
    }
}
