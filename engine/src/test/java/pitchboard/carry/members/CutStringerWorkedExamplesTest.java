package pitchboard.carry.members;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.brief.Strength;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.strength.Section;
import pitchboard.strength.Utilisation;

/**
 * How far a 2x12 cut for 7 1/2 over 10 1/4 reaches. Reckoned by hand by the throat method, as the commentary of the
 * Prescriptive Residential Wood Deck Construction Guide (DCA 6) does: a plain beam of the throat, 10 + 40 psf; or 10 psf
 * and 300 lb at mid span of one stringer. Spans are rounded down to the inch, so one inch more must fail.
 */
final class CutStringerWorkedExamplesTest {
    private static final Length RISE = Length.inches(7, 1, 2);
    private static final Length RUN = Length.inches(10, 1, 4);

    private static StringerChecks at(Basis basis, int inches, int apart) {
        return Bases.checks(basis, Bases.cut(RISE, RUN, Length.inches(inches), Length.inches(apart)));
    }

    /** From section and load: throat 5.197 in, S 6.753 in³, I 17.55 in⁴. */
    @Test
    void the_throat() {
        Section throat = Bases.cut(RISE, RUN, Length.feet(6), Length.inches(18)).bends();
        assertThat(throat.depth().approxMm() / 25.4).isCloseTo(5.197, within(0.0005));
        assertThat(throat.modulusMm3() / Math.pow(25.4, 3)).isCloseTo(6.753, within(0.0005));
        assertThat(throat.inertiaMm4() / Math.pow(25.4, 4)).isCloseTo(17.55, within(0.005));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # species, grade, service, treatment, sharing, 18 in: 50 psf, 300 lb; 20 in: 50 psf, 300 lb (feet.inches)
            Douglas Fir-Larch, No.2, DRY, NONE, false, 7-4, 5-10, 6-11, 5-9
            Douglas Fir-Larch, No.2, WET, PRESERVED, false, 7-4, 5-10, 6-11, 5-9
            Douglas Fir-Larch, No.2, WET, INCISED, false, 6-6, 4-9, 6-2, 4-9
            Douglas Fir-Larch, No.2, DRY, NONE, true, 7-10, 6-7, 7-5, 6-6
            Douglas Fir-Larch, No.2, WET, INCISED, true, 7-0, 5-5, 6-8, 5-4
            Hem-Fir, No.2, DRY, NONE, false, 7-1, 5-7, 6-9, 5-6
            Hem-Fir, No.2, WET, INCISED, false, 6-4, 4-6, 6-0, 4-6
            Spruce-Pine-Fir, No.1/No.2, DRY, NONE, false, 7-2, 5-8, 6-10, 5-8
            Spruce-Pine-Fir, No.1/No.2, WET, INCISED, false, 6-5, 4-8, 6-1, 4-7
            Southern Pine, No.2, WET, PRESERVED, false, 6-8, 5-0, 6-4, 4-11
            Western Cedars, No.2, WET, NONE, false, 6-5, 4-8, 6-1, 4-7
            Northern Species, No.1/No.2, WET, NONE, false, 6-1, 4-2, 5-9, 4-2
            """)
    void it_reaches_as_far_in_bending(
            String species,
            String grade,
            Strength.Service service,
            Strength.Treatment treatment,
            boolean sharing,
            String spread18,
            String point18,
            String spread20,
            String point20) {
        Basis basis = Bases.allowable(species, grade, service, treatment, sharing);
        bendsUpTo(basis, inches(spread18), 18);
        bendsUpTo(basis, inches(spread20), 20);
        bearsOneLoadUpTo(basis, inches(point18), 18);
        bearsOneLoadUpTo(basis, inches(point20), 20);
    }

    private static int inches(String feetAndInches) {
        String[] parts = feetAndInches.split("-", -1);
        return 12 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]);
    }

    private static void bendsUpTo(Basis basis, int inches, int apart) {
        assertThat(at(basis, inches, apart).bending().orThrow().ratio()).isLessThanOrEqualTo(1);
        assertThat(at(basis, inches + 1, apart).bending().orThrow().ratio()).isGreaterThan(1);
    }

    private static void bearsOneLoadUpTo(Basis basis, int inches, int apart) {
        assertThat(at(basis, inches, apart).pointLoad().orThrow().ratio()).isLessThanOrEqualTo(1);
        assertThat(at(basis, inches + 1, apart).pointLoad().orThrow().ratio()).isGreaterThan(1);
    }

    /** Plumb deflection under 40 psf, to a 360th of the level span. */
    @ParameterizedTest
    @CsvSource({
        "Douglas Fir-Larch, No.2, DRY, NONE, 8-2, 7-11",
        "Douglas Fir-Larch, No.2, WET, PRESERVED, 7-11, 7-8",
        "Douglas Fir-Larch, No.2, WET, INCISED, 7-9, 7-6",
        "Western Cedars, No.2, WET, NONE, 6-9, 6-6"
    })
    void it_is_stiff_as_far(
            String species,
            String grade,
            Strength.Service service,
            Strength.Treatment treatment,
            String at18,
            String at20) {
        Basis basis = Bases.allowable(species, grade, service, treatment, false);
        assertThat(at(basis, inches(at18), 18).deflection().ratio()).isLessThanOrEqualTo(1);
        assertThat(at(basis, inches(at18) + 1, 18).deflection().ratio()).isGreaterThan(1);
        assertThat(at(basis, inches(at20), 20).deflection().ratio()).isLessThanOrEqualTo(1);
        assertThat(at(basis, inches(at20) + 1, 20).deflection().ratio()).isGreaterThan(1);
    }

    /** At 7.350 ft: 276 lb at each end; 53 psi in shear were it a level beam, so 0.807 of that across the slope. */
    @Test
    void what_its_ends_bear() {
        Basis basis =
                Bases.allowable("Douglas Fir-Larch", "No.2", Strength.Service.DRY, Strength.Treatment.NONE, false);
        Length span = Length.feet(1).times(Decimals.ratio(7.350, 3));
        StringerChecks checks = Bases.checks(basis, Bases.cut(RISE, RUN, span, Length.inches(18)));
        assertThat(checks.footReaction().pounds()).isCloseTo(276, within(0.5));
        assertThat(shear(checks.shear())).isCloseTo(53 * 0.807, within(0.5));
        assertThat(checks.bending().orThrow().ratio()).isCloseTo(1, within(0.0005));
    }

    private static double shear(Utilisation shear) {
        return ((Reckoned) shear.demand().value()).value();
    }

    /** C24, 45 x 295, 180 over 250 mm, 450 mm apart: 3.45 m dry and 3.11 m wet; with 2 kN on one, 2.86 m and 2.38 m. */
    @ParameterizedTest
    @CsvSource({"DRY, 3.45, 2.86", "WET, 3.11, 2.38"})
    void by_eurocode(Strength.Service service, double spread, double point) {
        Basis basis = Bases.limitStates("C24", service);
        assertThat(ratio(basis, spread).bending().orThrow().ratio()).isCloseTo(1, within(0.004));
        assertThat(ratio(basis, point).pointLoad().orThrow().ratio()).isCloseTo(1, within(0.006));
    }

    private static StringerChecks ratio(Basis basis, double metres) {
        Section board = new Section(Length.mm(45), Length.mm(295));
        Length span = Length.mm(Decimals.ratio(metres * 1000, 0));
        return Bases.checks(basis, Bases.cut(Length.mm(180), Length.mm(250), span, Length.mm(450), board));
    }
}
