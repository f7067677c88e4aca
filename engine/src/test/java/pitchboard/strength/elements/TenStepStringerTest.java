package pitchboard.strength.elements;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.strength.elements.mesh.Xy;
import pitchboard.strength.elements.throat.AgainstThroat;
import pitchboard.strength.elements.throat.SlopedBeam;

/**
 * A 2x12 cut 7.5 by 10 in with ten steps, Douglas-fir, beside two other programs, a general one (CalculiX 2.20) and one
 * written for the purpose: both on equal meshes of up to 472,000 unknowns, whose limit was extrapolated. Computed there,
 * not published; they agree within 0.2 % on deflection and 0.3 % on stress.
 */
final class TenStepStringerTest {
    private static final Boards.Stringer BOARD = new Boards.Stringer(7.5, 10, 10, 11.25);
    private static final Effort THOROUGH = Effort.thorough(11.25 * Boards.INCH);

    private static final PlateAnswer.Solved POINT = solved(List.of(BOARD.point(4)));
    private static final PlateAnswer.Solved EVEN = solved(BOARD.everyTread());

    private static PlateAnswer.Solved solved(List<EdgeLoad> loads) {
        return solved(loads, THOROUGH);
    }

    private static PlateAnswer.Solved solved(List<EdgeLoad> loads, Effort effort) {
        return (PlateAnswer.Solved) Elements.solve(BOARD.plate(Boards.douglasFir(), loads), effort);
    }

    @Test
    void deflection_reaches_the_limit_of_finer_and_finer_meshes_within_half_a_percent() {
        check(POINT.fallMm(), 0.1789);
        check(EVEN.fallMm(), 0.1826);
    }

    /** As the papers use it: about half the unknowns. */
    @Test
    void the_usual_effort_reaches_the_limits_within_half_a_percent_too() {
        Effort usual = Effort.usual(11.25 * Boards.INCH);
        PlateAnswer.Solved point = solved(List.of(BOARD.point(4)), usual);
        PlateAnswer.Solved even = solved(BOARD.everyTread(), usual);
        assertThat(point.fallMm().value() / Boards.INCH).isCloseTo(0.1789, within(0.005 * 0.1789));
        assertThat(even.fallMm().value() / Boards.INCH).isCloseTo(0.1826, within(0.005 * 0.1826));
        checkTension(point, 790);
        checkTension(even, 706);
        assertThat(even.meshes().get(2).unknowns()).isBetween(15_000, 30_000);
    }

    private static void check(Limit fall, double inches) {
        assertThat(fall.value() / Boards.INCH).isCloseTo(inches, within(0.002 * inches));
        assertThat(fall.finest() / Boards.INCH).isCloseTo(inches, within(0.005 * inches));
        assertThat(fall.settled()).isTrue();
        assertThat(fall.uncertain()).isLessThan(0.003);
    }

    @Test
    void tension_at_the_lower_edge_reaches_its_limit_within_half_a_percent() {
        checkTension(POINT, 790);
        checkTension(EVEN, 706);
    }

    /** The place: 47 or 57 in from the first nosing along the board, under the two corners next to the middle. */
    private static void checkTension(PlateAnswer.Solved answer, double psi) {
        Peak tension = answer.peak(Peak.Kind.TENSION_ALONG);
        assertThat(tension.mpa().value() / Boards.PSI).isCloseTo(psi, within(0.005 * psi));
        Xy first = BOARD.stand(0, 0);
        double along = (BOARD.cos() * (tension.where().x() - first.x())
                        + BOARD.sin() * (tension.where().y() - first.y()))
                / Boards.INCH;
        assertThat(along).isBetween(46.0, 59.0);
    }

    /** Statics: 172.55 and 127.45 lb; 261.44 and 238.56 lb; nothing sideways. */
    @Test
    void reactions_are_those_of_statics() {
        checkReactions(POINT, 172.549, 127.451);
        checkReactions(EVEN, 261.438, 238.562);
    }

    private static void checkReactions(PlateAnswer.Solved answer, double foot, double head) {
        assertThat(answer.reactions().get(0).upN() / Boards.POUND).isCloseTo(foot, within(0.001));
        assertThat(answer.reactions().get(1).upN() / Boards.POUND).isCloseTo(head, within(0.001));
        assertThat(answer.reactions())
                .allSatisfy(each -> assertThat(each.levelN()).isCloseTo(0, within(1e-4)));
    }

    /** 0.778 and 0.777 of the throat's bending alone; 0.78 and 0.86 of its stress. */
    @Test
    void beside_the_throat_it_is_stiffer_and_less_stressed() {
        AgainstThroat point = AgainstThroat.of(POINT, throat(List.of(BOARD.point(4))));
        assertThat(1 / point.inertiaRatio()).isCloseTo(0.778, within(0.004));
        assertThat(point.equivalentDepthMm() / Boards.INCH).isCloseTo(5.71, within(0.01));
        assertThat(point.stressRatio()).isCloseTo(0.78, within(0.006));
        AgainstThroat even = AgainstThroat.of(EVEN, throat(BOARD.everyTread()));
        assertThat(1 / even.inertiaRatio()).isCloseTo(0.777, within(0.004));
        assertThat(even.stressRatio()).isCloseTo(0.86, within(0.006));
    }

    /** Throat 5.25 in: 0.229 and 0.234 in, with shear 0.235 and 0.240; stress 1010 and 826 psi. */
    @Test
    void the_throat_alone_sinks_as_tables_say() {
        SlopedBeam point = throat(List.of(BOARD.point(4)));
        assertThat(point.fallFromBendingMm() / Boards.INCH).isCloseTo(0.229, within(0.0006));
        assertThat(point.fallMm() / Boards.INCH).isCloseTo(0.2353, within(0.0003));
        assertThat(point.bendingMpa() / Boards.PSI).isCloseTo(1010, within(5.0));
        SlopedBeam even = throat(BOARD.everyTread());
        assertThat(even.fallFromBendingMm() / Boards.INCH).isCloseTo(0.234, within(0.0006));
        assertThat(even.fallMm() / Boards.INCH).isCloseTo(0.2395, within(0.0003));
        assertThat(even.bendingMpa() / Boards.PSI).isCloseTo(826, within(1.0));
    }

    private static SlopedBeam throat(List<EdgeLoad> loads) {
        return BOARD.beam(BOARD.throat(), Boards.douglasFir(), 1.5, loads);
    }

    @Test
    void the_meshes_and_their_unknowns_are_told() {
        assertThat(POINT.meshes()).hasSize(3);
        assertThat(POINT.meshes().get(0).unknowns()).isBetween(1_500, 3_000);
        assertThat(POINT.meshes().get(2).unknowns()).isBetween(25_000, 45_000);
        assertThat(POINT.meshes())
                .allSatisfy(step ->
                        assertThat(step.fallMm()).isLessThan(POINT.fallMm().value()));
        assertThat(POINT.picture().mesh().nodes())
                .isEqualTo(POINT.meshes().get(2).nodes());
    }

    /** Throat over the limit of the finite elements, and depth that a plain board with shear would need. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # rise, run, steps, depth, ET/EL, GLT/EL, nu: point over throat, even over throat, equal depth from bending
            7.5,  10, 10, 11.25,  0.050, 0.078, 0.449, 0.78, 0.78, 5.71
            7.5,  10, 10, 11.25,  0.068, 0.064, 0.292, 0.78, 0.78, 5.70
            7,    11, 10, 11.25,  0.050, 0.078, 0.449, 0.77, 0.77, 5.83
            7.75, 10, 10, 11.25,  0.050, 0.078, 0.449, 0.77, 0.77, 5.60
            8,     9, 10, 11.25,  0.050, 0.078, 0.449, 0.79, 0.79, 5.70
            6.5,  12, 10, 11.25,  0.050, 0.078, 0.449, 0.77, 0.77, 6.04
            7.5,  10, 10,  9.25,  0.050, 0.078, 0.449, 0.62, 0.62, 3.82
            7.5,  10, 10, 13.25,  0.050, 0.078, 0.449, 0.87, 0.87, 7.59
            """)
    void other_boards_agree_as_far_as_they_were_written_down(
            double rise,
            double run,
            int steps,
            double depth,
            double across,
            double shear,
            double poisson,
            double point,
            double even,
            double equalDepth) {
        Boards.Stringer board = new Boards.Stringer(rise, run, steps, depth);
        Orthotropic wood = Boards.ratios(across, shear, poisson);
        Effort effort = Effort.quick(depth * Boards.INCH);
        List<EdgeLoad> one = List.of(board.point(steps / 2 - 1));
        AgainstThroat onePoint = against(board, wood, one, effort);
        AgainstThroat every = against(board, wood, board.everyTread(), effort);
        assertThat(1 / onePoint.inertiaRatio()).isCloseTo(point, within(0.011));
        assertThat(1 / every.inertiaRatio()).isCloseTo(even, within(0.011));
        assertThat(onePoint.equivalentDepthMm() / Boards.INCH).isCloseTo(equalDepth, within(0.03));
    }

    private static AgainstThroat against(Boards.Stringer board, Orthotropic wood, List<EdgeLoad> loads, Effort effort) {
        PlateAnswer.Solved solved = (PlateAnswer.Solved) Elements.solve(board.plate(wood, loads), effort);
        return AgainstThroat.of(solved, board.beam(board.throat(), wood, 1.5, loads));
    }
}
