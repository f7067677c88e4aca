package pitchboard.strength.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Units;

final class AdjustingTest {
    private static final Bracing HELD = new Bracing.Held("the treads hold its edge");

    private static Adjusting board(String species, String grade, int width, Conditions use) {
        LumberSize size = LumberSize.named(2, width);
        return Adjusting.of(Supplement2018.table().find(species, grade, size).orThrow(), size, use)
                .orThrow();
    }

    /** Reckoned by hand from the factors of NDS 2018 4.3 and its Supplement. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # species,          grade, width, wet, treatment, sharing,   Fb' psi
            Douglas Fir-Larch, No.2, 12, DRY, NONE, ALONE, 900
            Douglas Fir-Larch, No.2, 12, WET, PRESERVED, ALONE, 900
            Douglas Fir-Larch, No.2, 12, WET, INCISED, ALONE, 720
            Douglas Fir-Larch, No.2, 12, WET, INCISED, REPETITIVE, 828
            Douglas Fir-Larch, No.2, 6, WET, NONE, ALONE, 994.5
            Douglas Fir-Larch, No.2, 6, DRY, NONE, ALONE, 1170
            Hem-Fir, No.2, 12, WET, INCISED, ALONE, 680
            Spruce-Pine-Fir, No.1/No.2, 12, WET, INCISED, ALONE, 700
            Southern Pine, No.2, 12, WET, PRESERVED, ALONE, 750
            Western Cedars, No.2, 12, WET, NONE, ALONE, 700
            Northern Species, No.1/No.2, 12, WET, NONE, ALONE, 625
            Southern Pine, Select Structural, 12, WET, PRESERVED, ALONE, 1360
            """)
    void bending_is_adjusted(
            String species,
            String grade,
            int width,
            Conditions.Moisture moisture,
            Conditions.Treatment treatment,
            Conditions.Sharing sharing,
            double psi) {
        Conditions use = Conditions.ORDINARY.with(moisture).with(treatment).with(sharing);
        assertThat(board(species, grade, width, use)
                        .bendingOnEdge(HELD)
                        .orThrow()
                        .value()
                        .psi())
                .isCloseTo(psi, within(1e-6));
    }

    @Test
    void every_factor_is_told_with_its_reason_whether_it_applies_or_not() {
        Resistance bending = board("Hem-Fir", "No.2", 10, Conditions.ORDINARY)
                .bendingOnEdge(HELD)
                .orThrow();
        assertThat(bending.factors())
                .extracting(Factor::symbol)
                .containsExactly("CD", "CM", "Ct", "CF", "Cfu", "Ci", "Cr", "CL");
        assertThat(bending.factors())
                .allSatisfy(factor -> assertThat(factor.because()).isNotBlank());
        assertThat(bending.factors())
                .filteredOn(Factor::applies)
                .extracting(Factor::symbol)
                .containsExactly("CF");
        assertThat(bending.figure(Units.POUNDS).expression()).isEqualTo("Fb × CF");
    }

    @Test
    void what_wet_and_incising_do_to_the_rest() {
        Conditions use = Conditions.ORDINARY.with(Conditions.Moisture.WET).with(Conditions.Treatment.INCISED);
        Adjusting board = board("Hem-Fir", "No.2", 12, use);
        assertThat(board.shear().value().psi()).isCloseTo(150 * 0.97 * 0.8, within(1e-9));
        assertThat(board.bearing(Length.inches(6), Length.ZERO).value().psi()).isCloseTo(405 * 0.67, within(1e-9));
        assertThat(board.modulus().value().psi()).isCloseTo(1.3e6 * 0.9 * 0.95, within(1e-3));
        assertThat(board.minimumModulus().value().psi()).isCloseTo(0.47e6 * 0.9 * 0.95, within(1e-3));
        assertThat(board.tension().orThrow().value().psi()).isCloseTo(525 * 0.8, within(1e-9));
        assertThat(board.compression().orThrow().value().psi()).isCloseTo(1300 * 0.8 * 0.8, within(1e-9));
    }

    @Test
    void a_blow_counts_for_less_on_treated_wood() {
        Conditions blow = Conditions.ORDINARY.with(Conditions.Duration.IMPACT);
        assertThat(board("Hem-Fir", "No.2", 12, blow).shear().value().psi()).isCloseTo(300, within(1e-9));
        assertThat(board("Hem-Fir", "No.2", 12, blow.with(Conditions.Treatment.PRESERVED))
                        .shear()
                        .value()
                        .psi())
                .isCloseTo(240, within(1e-9));
    }

    @Test
    void a_short_support_away_from_the_end_bears_more() {
        Adjusting board = board("Hem-Fir", "No.2", 12, Conditions.ORDINARY);
        assertThat(board.bearing(Length.inches(1, 1, 2), Length.inches(3))
                        .value()
                        .psi())
                .isCloseTo(405 * 1.25, within(1e-9));
        assertThat(board.bearing(Length.inches(1, 1, 2), Length.inches(2))
                        .value()
                        .psi())
                .isCloseTo(405, within(1e-9));
    }

    @Test
    void what_the_tables_do_not_have_is_told_with_what_they_have() {
        assertThat(because(Supplement2018.table().find("Balsa", "No.2", LumberSize.named(2, 12))))
                .contains("Balsa")
                .contains("Hem-Fir");
        assertThat(because(Supplement2018.table().find("Hem-Fir", "No.7", LumberSize.named(2, 12))))
                .contains("its grades are")
                .contains("No.2");
        assertThat(because(Supplement2018.table().find("Southern Pine", "No.2", LumberSize.named(2, 14))))
                .contains("2x12")
                .contains("not as 2x14");
        assertThat(because(LumberSize.of(Length.inches(1, 1, 2), Length.inches(8))))
                .contains("1.5 by 8 in")
                .contains("7.25");
    }

    @Test
    void a_board_is_known_dry_green_and_by_millimetres() {
        assertThat(LumberSize.of(Length.inches(1, 1, 2), Length.inches(11, 1, 4))
                        .orThrow())
                .isEqualTo(LumberSize.named(2, 12));
        assertThat(LumberSize.of(Length.inches(1, 9, 16), Length.inches(11, 1, 2))
                        .orThrow())
                .isEqualTo(LumberSize.named(2, 12).surfacedGreen());
        assertThat(LumberSize.of(Length.mm(38), Length.mm(286)).orThrow()).isEqualTo(LumberSize.named(2, 12));
    }

    @Test
    void what_a_formula_does_not_reach_is_not_told() {
        LumberSize size = LumberSize.named(2, 12);
        DesignValues values =
                Supplement2018.table().find("Hem-Fir", "No.2", size).orThrow();
        Conditions fire = Conditions.ORDINARY.with(Conditions.Treatment.AGAINST_FIRE);
        assertThat(because(Adjusting.of(values, size, fire))).contains("supplier");
        Bracing far = new Bracing.AtPoints(Length.feet(60), Bracing.Load.SPREAD);
        assertThat(because(board("Hem-Fir", "No.2", 12, Conditions.ORDINARY).bendingOnEdge(far)))
                .contains("RB");
        assertThat(because(Columns.compression(
                        board("Hem-Fir", "No.2", 4, Conditions.ORDINARY), Length.feet(20), Length.inches(1, 1, 2))))
                .contains("50");
        assertThat(because(board("Hem-Fir", "Stud", 8, Conditions.ORDINARY).bendingOnEdge(HELD)))
                .contains("No.3");
    }

    /** Far ends of what is published: no grade is stronger than one better, and every value is above zero. */
    @Test
    void the_tables_are_whole() {
        ValueTable table = Supplement2018.table();
        assertThat(table.species()).hasSize(12).contains("Southern Pine");
        for (String species : table.species()) {
            List<Double> strengths = table.grades(species).stream()
                    .filter(grade -> !grade.equals("Stud"))
                    .map(grade ->
                            table.find(species, grade, LumberSize.named(2, 12)).orThrow())
                    .map(values -> values.bending().psi())
                    .toList();
            assertThat(strengths).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        }
    }

    private static String because(Answer<?> answer) {
        return answer.match(value -> "known: " + value, because -> because);
    }
}
