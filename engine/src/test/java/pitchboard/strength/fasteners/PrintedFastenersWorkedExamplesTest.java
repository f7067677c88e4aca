package pitchboard.strength.fasteners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.strength.Force;
import pitchboard.strength.Stress;

/** NDS 2018 tables and public worked notes on it; each row of the two files names its source. */
final class PrintedFastenersWorkedExamplesTest {
    static Stream<PrintedCells.Sheared> everySheared() {
        return PrintedCells.sheared().stream().filter(cell -> !cell.isDoubtful());
    }

    static Stream<PrintedCells.Pull> everyPulled() {
        return PrintedCells.pulled().stream();
    }

    @ParameterizedTest
    @MethodSource("everySheared")
    void a_sheared_fastener_carries_what_is_printed(PrintedCells.Sheared cell) {
        Lateral reckoned = cell.reckoned();
        assertThat(reckoned.capacity().value().pounds()).isCloseTo(cell.printed(), within(cell.half() + 1e-9));
        assertThat(reckoned.governing()).hasToString(cell.mode());
    }

    @ParameterizedTest
    @MethodSource("everyPulled")
    void a_pulled_fastener_holds_what_is_printed(PrintedCells.Pull cell) {
        assertThat(cell.reckoned()).isCloseTo(cell.printed(), within(cell.half() + 1e-9));
    }

    /** From memory and far from what the formula gives: the memory is doubted, not the formula. */
    @Test
    void four_remembered_cells_are_doubted() {
        List<PrintedCells.Sheared> doubted = PrintedCells.sheared().stream()
                .filter(PrintedCells.Sheared::isDoubtful)
                .toList();
        assertThat(doubted)
                .hasSize(4)
                .allSatisfy(cell -> assertThat(
                                Math.abs(cell.reckoned().capacity().value().pounds() - cell.printed()))
                        .isGreaterThan(2 * cell.half()));
    }

    @Test
    void all_of_them_were_read() {
        assertThat(PrintedCells.sheared()).hasSizeGreaterThan(70);
        assertThat(PrintedCells.pulled()).hasSizeGreaterThan(30);
    }

    /**
     * A public worked note on NDS 2018 12.3.1 with unrounded bearing strengths: an 8d nail, 0.131 by 2 1/2 in, from 3/4 in of
     * G 0.50 into spruce-pine-fir of G 0.42, 1 3/4 in deep.
     */
    @Test
    void every_mode_of_a_nail_is_that_of_the_worked_note() {
        Fastener nail = Fastener.nail(new Diameter(0.131)).orThrow();
        Member main = member(DowelBearing.thin(0.42), Length.inches(1, 3, 4));
        Member side = member(DowelBearing.thin(0.50), Length.inches(0, 3, 4));
        Lateral lateral = Lateral.of(nail, main, side, YieldLimit.Shear.SINGLE);
        assertThat(lateral.modes().get(Mode.IM).pounds()).isCloseTo(350.57, within(0.005));
        assertThat(lateral.modes().get(Mode.IIIM).pounds()).isCloseTo(132.95, within(0.005));
        assertThat(lateral.modes().get(Mode.IIIS).pounds()).isCloseTo(84.38, within(0.005));
        assertThat(lateral.k1()).isCloseTo(0.6099, within(5e-5));
        assertThat(lateral.k2()).isCloseTo(0.9296, within(5e-5));
        assertThat(lateral.k3()).isCloseTo(1.5307, within(5e-5));
        assertThat(lateral.modes()).hasSize(6);
    }

    private static Member member(double psi, Length length) {
        return new Member(Stress.psi(psi), length, 0, DowelBearing.SOURCE);
    }

    /** NDS 2018 Table 12.2F, quoted with its page in a public test specification. */
    @ParameterizedTest
    @CsvSource({"0.234, 5/16, 0.50, 40", "0.500, 1 1/2, 0.42, 239"})
    void a_head_is_pulled_through_at_what_is_printed(double head, String thickness, double gravity, double pounds) {
        Force force = Pulled.through(new Diameter(head), gravity, Read.inches(thickness))
                .orThrow()
                .value();
        assertThat(force.pounds()).isCloseTo(pounds, within(0.5));
    }

    /** NDS 2018 Table 12.3.3, from memory; each is what the formula gives, rounded to 50 psi. */
    @ParameterizedTest
    @CsvSource({
        "0.55, 0.5, 0, 6150",
        "0.43, 0.5, 0, 4800",
        "0.42, 0.5, 0, 4700",
        "0.50, 0.25, 90, 4450",
        "0.50, 0.5, 90, 3150",
        "0.43, 0.2, 0, 3500",
        "0.43, 0.2, 90, 3500"
    })
    void wood_bears_what_is_printed(double gravity, double diameter, double degrees, double psi) {
        assertThat(DowelBearing.atAngle(gravity, new Diameter(diameter), degrees)
                        .orThrow()
                        .psi())
                .isCloseTo(psi, within(1e-6));
    }

    /** NDS 2018 Table 11.3.6A, from memory: D 1 in, s 4 in, E 1.4e6 psi, equal members of 5 and 12 sq in. */
    @ParameterizedTest
    @CsvSource({"5, 3, 0.97", "5, 4, 0.91", "12, 3, 0.99", "12, 5, 0.92"})
    void a_group_shares_as_printed(double squareInches, int inRow, double printed) {
        Stress modulus = Stress.psi(1.4e6);
        double area = squareInches * 25.4 * 25.4;
        Group group = new Group(inRow, Length.inches(4), new Diameter(1), modulus, area, modulus, area, false);
        assertThat(group.factor().orThrow().value()).isCloseTo(printed, within(0.0055));
    }
}
