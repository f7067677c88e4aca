package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import pitchboard.strength.elements.mesh.Fineness;
import pitchboard.strength.elements.mesh.Xy;

final class ElementsLawsTest {
    private static final Effort COARSE = new Effort(new Fineness(100, 8, 1), 1, 25.4);

    private static PlateAnswer.Solved solve(Plate plate) {
        return (PlateAnswer.Solved) Elements.solve(plate, COARSE);
    }

    @RepeatedTest(15)
    void reactions_sum_to_the_load_and_turn_nothing(RepetitionInfo repetition) {
        Plate plate = anyPlate(new Random(repetition.getCurrentRepetition()));
        PlateAnswer.Solved solved = solve(plate);
        double up = solved.reactions().stream().mapToDouble(Reaction::upN).sum();
        double level = solved.reactions().stream().mapToDouble(Reaction::levelN).sum();
        double down = plate.loads().stream().mapToDouble(EdgeLoad::totalY).sum();
        double pushed = plate.loads().stream().mapToDouble(EdgeLoad::totalX).sum();
        assertThat(up).isCloseTo(-down, within(1e-6));
        assertThat(level).isCloseTo(-pushed, within(1e-6));
        double turn = 0;
        for (Reaction each : solved.reactions()) {
            turn += each.upN() * each.support().middle().x()
                    - each.levelN() * each.support().middle().y();
        }
        for (EdgeLoad each : plate.loads()) {
            Xy middle = each.from().toward(each.to(), 0.5);
            turn += each.totalY() * middle.x() - each.totalX() * middle.y();
        }
        assertThat(turn).isCloseTo(0, within(1e-3));
    }

    @RepeatedTest(8)
    void twice_the_load_is_twice_the_answer(RepetitionInfo repetition) {
        Plate plate = anyPlate(new Random(100 + repetition.getCurrentRepetition()));
        List<EdgeLoad> twice = new ArrayList<>(plate.loads());
        twice.addAll(plate.loads());
        PlateAnswer.Solved one = solve(plate);
        PlateAnswer.Solved two = solve(withLoads(plate, twice));
        assertThat(two.fallMm().finest()).isCloseTo(2 * one.fallMm().finest(), within(1e-8));
        for (Peak.Kind kind : Peak.Kind.values()) {
            double single = one.peak(kind).mpa().finest();
            assertThat(two.peak(kind).mpa().finest()).isCloseTo(2 * single, within(1e-8 * (1 + single)));
        }
    }

    @RepeatedTest(8)
    void one_more_load_down_sinks_the_board_further(RepetitionInfo repetition) {
        Random chance = new Random(200 + repetition.getCurrentRepetition());
        Boards.Stringer board = anyBoard(chance);
        Plate plate = board.plate(Boards.douglasFir(), List.of(board.point(board.steps() / 2)));
        List<EdgeLoad> more = new ArrayList<>(plate.loads());
        more.add(board.point(board.steps() / 2));
        more.addAll(board.everyTread().subList(1, board.steps() - 1));
        assertThat(solve(withLoads(plate, more)).fallMm().finest())
                .isGreaterThan(1.5 * solve(plate).fallMm().finest());
    }

    @RepeatedTest(6)
    void a_stiffer_or_thicker_board_sinks_less(RepetitionInfo repetition) {
        Boards.Stringer board = anyBoard(new Random(300 + repetition.getCurrentRepetition()));
        List<EdgeLoad> loads = board.everyTread();
        double fall = solve(board.plate(Boards.douglasFir(), loads)).fallMm().finest();
        double stiffer =
                solve(board.plate(Boards.ratios(0.1, 0.1, 0.4), loads)).fallMm().finest();
        double thicker =
                solve(board.plate(Boards.douglasFir(), 3, loads)).fallMm().finest();
        assertThat(stiffer).isLessThan(fall);
        assertThat(thicker).isCloseTo(fall / 2, within(1e-9));
    }

    /** A board notched alike on both halves, loaded alike, grain level: both ends carry the same. */
    @Test
    void a_symmetric_board_has_symmetric_answers() {
        List<Xy> outline = List.of(
                new Xy(0, 0),
                new Xy(1000, 0),
                new Xy(1000, 200),
                new Xy(700, 200),
                new Xy(700, 140),
                new Xy(600, 140),
                new Xy(600, 200),
                new Xy(400, 200),
                new Xy(400, 140),
                new Xy(300, 140),
                new Xy(300, 200),
                new Xy(0, 200));
        List<Support> ends = List.of(
                Support.roller(new Xy(0, 0), new Xy(80, 0)),
                Support.roller(new Xy(1000, 0), new Xy(920, 0)),
                new Support(new Xy(600, 200), new Xy(400, 200), Support.Face.RIGID, Support.Held.LEVEL));
        List<EdgeLoad> loads = List.of(EdgeLoad.down(new Xy(400, 200), new Xy(600, 200), 1000));
        Plate plate = new Plate(outline, 38, Boards.douglasFir(), new Xy(1, 0), ends, loads);
        PlateAnswer.Solved solved =
                (PlateAnswer.Solved) Elements.solve(plate, new Effort(new Fineness(40, 3, 0.7), 2, 20));
        assertThat(solved.reactions().get(0).upN()).isCloseTo(500, within(1e-6));
        assertThat(solved.reactions().get(1).upN()).isCloseTo(500, within(1e-6));
        assertThat(solved.lowest().x()).isBetween(400.0, 600.0);
        assertThat(solved.peak(Peak.Kind.TENSION_ALONG).where().x()).isBetween(290.0, 710.0);
    }

    /** The answer does not depend on where the board stands. */
    @Test
    void moving_the_whole_picture_changes_nothing() {
        Boards.Stringer board = new Boards.Stringer(7.5, 10, 6, 11.25);
        Plate here = board.plate(Boards.douglasFir(), List.of(board.point(3)));
        Plate there = moved(here, 5000, -3000);
        assertThat(solve(there).fallMm().finest())
                .isCloseTo(solve(here).fallMm().finest(), within(1e-3));
        assertThat(solve(there).reactions().get(0).upN())
                .isCloseTo(solve(here).reactions().get(0).upN(), within(1e-6));
    }

    private static Plate moved(Plate plate, double x, double y) {
        return new Plate(
                plate.outline().stream().map(each -> moved(each, x, y)).toList(),
                plate.thicknessMm(),
                plate.wood(),
                plate.grain(),
                plate.supports().stream()
                        .map(each ->
                                new Support(moved(each.from(), x, y), moved(each.to(), x, y), each.face(), each.held()))
                        .toList(),
                plate.loads().stream()
                        .map(each -> new EdgeLoad(
                                moved(each.from(), x, y),
                                moved(each.to(), x, y),
                                each.startX(),
                                each.startY(),
                                each.endX(),
                                each.endY()))
                        .toList());
    }

    private static Xy moved(Xy place, double x, double y) {
        return new Xy(place.x() + x, place.y() + y);
    }

    private static Plate withLoads(Plate plate, List<EdgeLoad> loads) {
        return new Plate(plate.outline(), plate.thicknessMm(), plate.wood(), plate.grain(), plate.supports(), loads);
    }

    private static Boards.Stringer anyBoard(Random chance) {
        return new Boards.Stringer(
                6 + 2 * chance.nextDouble(), 9 + 3 * chance.nextDouble(), 3 + chance.nextInt(10), 11.25);
    }

    /** Any board with three loads, also sideways. */
    private static Plate anyPlate(Random chance) {
        Boards.Stringer board = anyBoard(chance);
        List<EdgeLoad> loads = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            int step = chance.nextInt(board.steps());
            loads.add(EdgeLoad.total(
                    board.nosing(step), board.inner(step), 200 * chance.nextDouble(), -1000 * chance.nextDouble()));
        }
        return board.plate(Boards.douglasFir(), loads);
    }
}
