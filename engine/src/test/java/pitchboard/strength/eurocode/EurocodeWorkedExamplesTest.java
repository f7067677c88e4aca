package pitchboard.strength.eurocode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.Factor;
import pitchboard.strength.Section;
import pitchboard.strength.Spans;

/** Published checks of an open structural library for EN 1995-1-1, and figures reckoned by hand where it says so. */
final class EurocodeWorkedExamplesTest {
    private static Designing designing(String name, Service service, Service.Duration duration) {
        return new Designing(En338.find(name).orThrow(), service, duration, false);
    }

    /** Read: fm,d 14.769, fc,0,d 14.538, fc,90,d 0.846 N/mm², each with gamma M 1.3. */
    @Test
    void design_strengths() {
        assertThat(designing("C24", Service.CLASS_1, Service.Duration.MEDIUM)
                        .bending(Length.mm(200))
                        .value()
                        .nPerMm2())
                .isCloseTo(14.769, within(0.0005));
        assertThat(designing("C24", Service.CLASS_2, Service.Duration.SHORT)
                        .compression()
                        .value()
                        .nPerMm2())
                .isCloseTo(14.538, within(0.0005));
        assertThat(designing("C18", Service.CLASS_3, Service.Duration.PERMANENT)
                        .bearing()
                        .value()
                        .nPerMm2())
                .isCloseTo(0.846, within(0.0005));
    }

    /** Read: C24, 50 x 200, 5 m long, effective length 0.9 L + 2 h: relative slenderness 1.277, kcrit 0.602. */
    @Test
    void a_slender_beam_tips() {
        Designing beam = designing("C24", Service.CLASS_1, Service.Duration.MEDIUM);
        Section section = new Section(Length.mm(50), Length.mm(200));
        Length effective = Length.mm(4900);
        assertThat(beam.relativeSlenderness(section, effective)).isCloseTo(1.277, within(0.0005));
        assertThat(beam.stability(section, effective).value()).isCloseTo(0.602, within(0.0005));
    }

    /** Reckoned by hand from EN 1995-1-1 (6.60) to (6.62), as a European handbook of laminated veneer quotes them. */
    @ParameterizedTest
    @CsvSource({"225, 180, 75, 0, 0.548", "225, 150, 75, 0, 0.447", "225, 180, 75, 2, 0.662", "300, 225, 100, 0, 0.433"
    })
    void a_notch_at_the_support_weakens(int h, int left, int away, double incline, double factor) {
        Notch notch = new Notch(Length.mm(h), Length.mm(left), Length.mm(away), incline);
        assertThat(notch.factor().orThrow()).isCloseTo(factor, within(0.0006));
    }

    @Test
    void a_notch_that_leaves_nothing_is_not_told() {
        assertThat(new Notch(Length.mm(225), Length.ZERO, Length.mm(75), 0).factor())
                .isInstanceOf(Answer.Unknown.class);
    }

    /**
     * Reckoned by hand: 45 x 295 C24 cut for 180 over 250 mm, throat 148.9 mm, 450 mm apart, 0.5 + 2.0 kN/m², gamma 1.35
     * and 1.5: 3.45 m in service class 1 and 3.11 m in class 3.
     */
    @ParameterizedTest
    @CsvSource({"CLASS_1, 3.45", "CLASS_3, 3.11"})
    void a_cut_stringer_reaches(Service service, double metres) {
        Section throat = new Section(Length.mm(45), Length.mm(Decimals.ratio(148.924, 3)));
        AreaLoad load = AreaLoad.kNPerM2(1.35 * 0.5 + 1.5 * 2.0);
        Length reach = Spans.byBending(
                load.across(Length.mm(450)),
                throat,
                designing("C24", service, Service.Duration.MEDIUM)
                        .bending(Length.mm(295))
                        .value());
        assertThat(reach.approxMm() / 1000).isCloseTo(metres, within(0.006));
    }

    /** EN 1995-1-1, 3.2(3): below 150 mm; and 6.1.7(2): the older classes have the cracks in their shear values. */
    @Test
    void size_and_cracks() {
        Designing board = designing("C24", Service.CLASS_1, Service.Duration.MEDIUM);
        assertThat(board.bending(Length.mm(150)).factors())
                .noneMatch(factor -> factor.symbol().equals("kh") && factor.applies());
        assertThat(factor(board.bending(Length.mm(100)).factors(), "kh")).isCloseTo(1.0845, within(0.0001));
        assertThat(factor(board.bending(Length.mm(38)).factors(), "kh")).isEqualTo(1.3);
        assertThat(factor(board.shear().factors(), "kcr")).isEqualTo(0.67);
        Designing older =
                new Designing(En338.findOlder("C24").orThrow(), Service.CLASS_1, Service.Duration.MEDIUM, true);
        assertThat(factor(older.shear().factors(), "kcr")).isEqualTo(1);
        assertThat(factor(older.bending(Length.mm(200)).factors(), "ksys")).isEqualTo(1.1);
    }

    /** EN 338:2016, Table 1: a grade's neighbours are weaker and stronger; C24 as printed. */
    @Test
    void the_table_of_classes_is_whole() {
        assertThat(En338.names())
                .startsWith("C14", "C16")
                .contains("C24", "C50", "D30")
                .hasSize(14);
        StrengthClass c24 = En338.find("C24").orThrow();
        assertThat(c24.bending().nPerMm2()).isEqualTo(24);
        assertThat(c24.shear().nPerMm2()).isEqualTo(4.0);
        assertThat(c24.bearing().nPerMm2()).isEqualTo(2.5);
        assertThat(c24.modulus().nPerMm2()).isEqualTo(11000);
        assertThat(c24.lowModulus().nPerMm2()).isEqualTo(7400);
        assertThat(c24.density()).isEqualTo(350);
        assertThat(En338.find("C25").<String>match(found -> "", because -> because))
                .contains("C24");
    }

    /** EN 1995-1-1, 2.2.3: 2 mm and 4 mm at once, psi2 0.3, class 2: 2·1.8 + 4·1.24 mm in the end. */
    @Test
    void what_lies_long_sags_more() {
        Deflections deflections = new Deflections(2, 4, 0.3);
        assertThat(deflections.atOnceMm()).isEqualTo(6);
        assertThat(deflections.finalMm(Service.CLASS_2)).isCloseTo(8.56, within(1e-9));
    }

    private static double factor(List<Factor> factors, String symbol) {
        return factors.stream()
                .filter(each -> each.symbol().equals(symbol))
                .mapToDouble(Factor::value)
                .findFirst()
                .orElseThrow();
    }
}
