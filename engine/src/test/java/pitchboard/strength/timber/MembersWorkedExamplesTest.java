package pitchboard.strength.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.SimpleBeam;
import pitchboard.strength.Spans;
import pitchboard.strength.Stress;

/** Worked examples of the publisher and of the housing department; each tolerance is half the last printed digit. */
final class MembersWorkedExamplesTest {
    private static final Bracing.Held HELD = new Bracing.Held("the deck holds the edge");

    private static Adjusting board(String species, String grade, int thickness, int width, Conditions use) {
        LumberSize size = LumberSize.named(thickness, width);
        DesignValues values = Supplement2018.table().find(species, grade, size).orThrow();
        return Adjusting.of(values, size, use).orThrow();
    }

    private static Section section(LumberSize size) {
        return new Section(size.actualThickness(), size.actualWidth());
    }

    /** American Wood Council, Structural Wood Design Examples, E1.2a: A 53.38, S 135.66, I 1034 in. */
    @Test
    void a_four_by_sixteen_has_the_printed_section() {
        Section section = section(LumberSize.named(4, 16));
        assertThat(section.areaMm2() / Math.pow(25.4, 2)).isCloseTo(53.38, within(0.006));
        assertThat(section.modulusMm3() / Math.pow(25.4, 3)).isCloseTo(135.66, within(0.006));
        assertThat(section.inertiaMm4() / Math.pow(25.4, 4)).isCloseTo(1034, within(0.6));
    }

    /** The same example: span and free length 20 ft, one load at mid span: le 375 in, RB 21.6, CL 0.876, Fb′ 1313 psi. */
    @Test
    void a_long_beam_held_at_its_ends_only_bears_what_the_example_says() {
        Bracing.AtPoints ends = new Bracing.AtPoints(Length.feet(20), Bracing.Load.MIDDLE);
        Adjusting board = board("Douglas Fir-Larch", "Select Structural", 4, 16, Conditions.ORDINARY);
        Stability stability =
                new Stability(Stress.psi(1500), board.minimumModulus().value(), section(board.size()));
        assertThat(stability.effectiveMm(ends) / 25.4).isCloseTo(375, within(0.6));
        assertThat(stability.slenderness(ends)).isCloseTo(21.6, within(0.05));
        Resistance bending = board.bendingOnEdge(ends).orThrow();
        assertThat(factor(bending, "CL").value()).isCloseTo(0.876, within(0.0005));
        assertThat(bending.value().psi()).isCloseTo(1313, within(0.6));
    }

    /**
     * US Department of Housing and Urban Development, Residential Structural Design Guide, 2nd ed., example 5.1: 2x8 at
     * 16 in, 30 + 10 psf, Fb 975, E 1.5e6: Fb′ 1345 psi, 14.9 ft by bending, 13.8 ft by L/360, 12.5 ft under 40 psf (its
     * spans are rounded now up, now down).
     */
    @Test
    void a_joist_reaches_as_far_as_the_guide_says() {
        Adjusting board = board("Hem-Fir", "No.1", 2, 8, Conditions.ORDINARY.with(Conditions.Sharing.REPETITIVE));
        Section section = section(board.size());
        Stress bending = board.bendingOnEdge(HELD).orThrow().value();
        assertThat(bending.psi()).isCloseTo(1345, within(0.6));
        Length spacing = Length.inches(16);
        assertThat(feet(Spans.byBending(AreaLoad.psf(40).across(spacing), section, bending)))
                .isCloseTo(14.9, within(0.1));
        Stress modulus = board.modulus().value();
        assertThat(feet(Spans.byDeflection(AreaLoad.psf(30).across(spacing), section, modulus, 360)))
                .isCloseTo(13.8, within(0.1));
        assertThat(feet(Spans.byDeflection(AreaLoad.psf(40).across(spacing), section, modulus, 360)))
                .isCloseTo(12.5, within(0.1));
    }

    /** The same guide, example 5.6: a 4x4 spruce post 7.3 ft long under 4800 lb: CP 0.438, ratio 0.677. */
    @Test
    void a_post_buckles_as_the_guide_says() {
        Length side = Length.inches(3, 1, 2);
        Length free = Length.feet(1).times(Ratio.of(73, 10));
        Adjusting board = board("Spruce-Pine-Fir", "No.1/No.2", 4, 4, Conditions.ORDINARY);
        Resistance compression = Columns.compression(board, free, side).orThrow();
        assertThat(factor(compression, "CP").value()).isCloseTo(0.438, within(0.002));
        Stress pressure = new Stress(Force.pounds(4800).newtons() / (side.approxMm() * side.approxMm()));
        assertThat(pressure.over(compression.value())).isCloseTo(0.677, within(0.003));
    }

    /** DCA 6 (2015), figures 27 to 30: cut stringers 6 ft 0 in, solid ones 13 ft 3 in; the basis was found by reckoning. */
    @ParameterizedTest
    @CsvSource({"5.1, 6.0", "11.25, 13.25"})
    void the_published_reach_of_stringers_rests_on_the_weakest_listed_species(double depth, double feet) {
        Adjusting weakest = board("Northern Species", "No.1/No.2", 2, 12, Conditions.ORDINARY);
        Section throat = new Section(Length.inches(1, 1, 2), Length.inches(Decimals.ratio(depth, 2)));
        Length reach = Spans.byBending(
                AreaLoad.psf(50).across(Length.inches(18)),
                throat,
                weakest.bendingOnEdge(HELD).orThrow().value());
        assertThat(feet(reach)).isCloseTo(feet, within(1.0 / 12));
        assertThat(feet(reach)).isGreaterThan(feet);
    }

    /** Wisconsin SPS 321 appendix B and DCA 6: 300 lb on one tread board of 34.5 in, wet; stiffness as a part of the span. */
    @ParameterizedTest
    @CsvSource({
        "Southern Pine, No.2, 2, 8, PRESERVED, 345",
        "Hem-Fir, No.2, 2, 8, INCISED, 305",
        "Western Cedars, No.2, 2, 8, NONE, 247",
        "Western Cedars, No.2, 2, 10, NONE, 315"
    })
    void a_tread_board_is_as_stiff_as_the_published_sizes_need(
            String species, String grade, int thickness, int width, Conditions.Treatment treatment, double part) {
        Adjusting board = board(
                species,
                grade,
                thickness,
                width,
                Conditions.ORDINARY.with(Conditions.Moisture.WET).with(treatment));
        SimpleBeam beam = new SimpleBeam(Length.inches(34, 1, 2));
        double deflection = beam.deflectionMm(
                Force.pounds(300),
                board.modulus().value(),
                section(board.size()).turned());
        assertThat(beam.span().approxMm() / deflection).isCloseTo(part, within(0.6));
    }

    /** NDS 2018, 3.4.3: reckoned by hand for a 2x12 and 180 psi. */
    @Test
    void a_notch_on_the_edge_in_tension_costs_more_than_its_depth() {
        Section section = section(LumberSize.named(2, 12));
        Stress shear = Stress.psi(180);
        assertThat(Notches.whole(shear, section).pounds()).isCloseTo(2025, within(0.6));
        assertThat(Notches.tensionEdge(shear, section, Length.inches(9, 1, 4))
                        .orThrow()
                        .pounds())
                .isCloseTo(1126, within(0.6));
        assertThat(Notches.tensionEdge(shear, section, Length.inches(8, 7, 16))
                        .orThrow()
                        .pounds())
                .isCloseTo(854, within(0.6));
    }

    /** US customary units as defined: 1 psi = 6.894757 kPa, 1 plf = 14.593903 N/m, 1 psf = 47.880259 Pa. */
    @Test
    void pounds_become_newtons_as_defined() {
        assertThat(Stress.psi(1).nPerMm2()).isCloseTo(0.006894757, within(5e-10));
        assertThat(LineLoad.poundsPerFoot(1).nPerMm()).isCloseTo(0.014593903, within(5e-10));
        assertThat(AreaLoad.psf(1).nPerMm2()).isCloseTo(0.000047880259, within(5e-14));
    }

    private static Factor factor(Resistance resistance, String symbol) {
        return resistance.factors().stream()
                .filter(factor -> factor.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    private static double feet(Length length) {
        return length.approxMm() / 304.8;
    }
}
