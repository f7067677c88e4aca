package pitchboard.strength.elements.throat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Length;
import pitchboard.strength.LineLoad;
import pitchboard.strength.TwoSpans;
import pitchboard.strength.elements.throat.SlopedBeam.Patch;

/** Against the closed forms of beam tables, exact. */
final class SlopedBeamTest {
    private static final double INERTIA = 40 * Math.pow(200, 3) / 12;

    private static SlopedBeam beam(double cos, Patch... loads) {
        return new SlopedBeam(3000, cos, 200, 40, 11000, 690, List.of(loads));
    }

    @Test
    void an_even_load_bends_it_by_five_w_l4_over_384_e_i() {
        SlopedBeam beam = beam(1, new Patch(0, 3000, 3000));
        double bending = 5 * Math.pow(3000, 4) / (384 * 11000 * INERTIA);
        double shear = 1.2 * 3000.0 * 3000 / (8 * 690 * 40 * 200);
        assertThat(beam.lowerReactionN()).isCloseTo(1500, within(1e-9));
        assertThat(beam.moment(1500)).isCloseTo(3000.0 * 3000 / 8, within(1e-6));
        assertThat(beam.bendingMpa()).isCloseTo(3000.0 * 3000 / 8 / (40.0 * 200 * 200 / 6), within(1e-9));
        assertThat(beam.fallFromBendingMm()).isCloseTo(bending, within(1e-5 * bending));
        assertThat(beam.fallMm()).isCloseTo(bending + shear, within(1e-5 * bending));
    }

    @Test
    void a_narrow_load_at_the_middle_bends_it_by_p_l3_over_48_e_i() {
        SlopedBeam beam = beam(1, new Patch(1499.99, 1500.01, 1000));
        double bending = 1000 * Math.pow(3000, 3) / (48 * 11000 * INERTIA);
        assertThat(beam.fallFromBendingMm()).isCloseTo(bending, within(1e-4 * bending));
    }

    @Test
    void on_a_slope_the_plumb_fall_is_that_of_the_flat_beam_over_the_cosine() {
        SlopedBeam flat = beam(1, new Patch(200, 900, 700));
        SlopedBeam steep = beam(0.8, new Patch(200, 900, 700));
        assertThat(steep.fallFromBendingMm()).isCloseTo(flat.fallFromBendingMm() / 0.8, within(1e-9));
        assertThat(steep.bendingMpa()).isCloseTo(flat.bendingMpa(), within(1e-9));
    }

    @Test
    void what_stands_beyond_a_support_lifts_the_span() {
        SlopedBeam beam = beam(1, new Patch(-500, 0, 1000));
        assertThat(beam.lowerReactionN()).isCloseTo(1000 * 3250.0 / 3000, within(1e-9));
        assertThat(beam.moment(0)).isCloseTo(-1000 * 250, within(1e-6));
        assertThat(beam.fallMm()).isZero();
    }

    /** Two equal spans: 10/8 of w L, w L² / 8 over the post, and a sag of w L⁴ / (185 E I), as handbooks have it. */
    @Test
    void over_a_post_at_the_middle_it_is_two_propped_spans() {
        SlopedBeam beam = beam(1, new Patch(0, 3000, 3000)).over(1500);
        assertThat(beam.lowerReactionN()).isCloseTo(3 / 8.0 * 1500, within(0.01));
        assertThat(-beam.loads().get(1).downN()).isCloseTo(10 / 8.0 * 1500, within(0.01));
        assertThat(beam.bendingMpa()).isCloseTo(1500.0 * 1500 / 8 / (40.0 * 200 * 200 / 6), within(1e-3));
        double sag = Math.pow(1500, 4) / (184.6 * 11000 * INERTIA);
        assertThat(beam.fallFromBendingMm()).isCloseTo(sag, within(1e-3 * sag));
    }

    /** As the post under a stringer is checked. */
    @Test
    void over_a_post_anywhere_it_is_the_equation_of_three_moments() {
        for (int at = 300; at < 3000; at += 337) {
            TwoSpans spans = new TwoSpans(Length.mm(at), Length.mm(3000 - at));
            SlopedBeam beam = beam(0.8, new Patch(0, 3000, 6000)).over(at);
            assertThat(beam.lowerReactionN())
                    .isCloseTo(spans.atFirstEnd(new LineLoad(2)).newtons(), within(0.5));
            double moment = spans.overSupport(new LineLoad(2)).nMm();
            assertThat(-beam.moment(at)).isCloseTo(moment, within(5e-4 * moment));
        }
    }

    @Test
    void a_post_beyond_its_supports_is_a_broken_promise() {
        SlopedBeam beam = beam(1, new Patch(0, 3000, 3000));
        assertThatThrownBy(() -> beam.over(3000)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void no_span_is_a_broken_promise() {
        assertThatThrownBy(() -> new SlopedBeam(0, 1, 200, 40, 11000, 690, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
