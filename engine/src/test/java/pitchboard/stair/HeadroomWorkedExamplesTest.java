package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.Length;

/** Headroom as the trade counts it: so many risers down from the floor above, less the depth of that floor. */
final class HeadroomWorkedExamplesTest {
    private static final Length RUN = Length.inches(10);

    /** The headroom under the edge of a floor that ends over this tread. */
    private static Length under(Length totalRise, int risers, Length underside, int tread) {
        Stair plain = OrdinaryJob.ofRise(totalRise).stair(risers, RUN);
        Length fromHeader = plain.headerFace().minus(plain.nosing(tread).x());
        return OrdinaryJob.ofRise(totalRise)
                .under(underside, fromHeader)
                .stair(risers, RUN)
                .headroom()
                .orElseThrow()
                .clear();
    }

    /**
     * Treatise on Architecture and Building Construction, vol. 3 (1899), sec. 11 p. 25: 12 risers of 8 in make 96, less a
     * floor 10 in deep leaves 7'-2". Fourteen risers in all, as fig. 20 has.
     */
    @Test
    void twelve_risers_down_less_the_floor() {
        Length totalRise = Length.inches(8).times(14);
        Length underside = totalRise.minus(Length.inches(10));
        assertThat(under(totalRise, 14, underside, 14 - 12)).isEqualTo(Read.inches("7'-2\""));
    }

    /**
     * Radford's Cyclopedia of Construction, vol. 3, Stair Building Simplified, fig. 71: 9'-0 1/2" above the lower floor
     * less two risers is 7'-10", which is right for a rise rounded to 7 1/4. Exactly, 17 risers climb 10'-3".
     */
    @Test
    void two_risers_up_under_a_ceiling_exact_beside_printed() {
        Length exact = under(Read.inches("10'-3\""), 17, Read.inches("9'-0 1/2\""), 2);
        assertThat(exact).isEqualTo(Length.inches(94, 1, 34));
        assertThat(exact.minus(Read.inches("7'-10\""))).isEqualTo(Length.inches(0, 1, 34));
    }

    /** Own arithmetic: rise 7 1/2, floor 10 deep, headroom wanted 80: twelve risers down, an opening of 120 at run 10. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # risers down | headroom
            11            | 72 1/2
            12            | 80
            13            | 87 1/2
            """)
    void the_opening_ends_where_enough_risers_are_counted_down(int down, String headroom) {
        Length totalRise = Read.inches("7 1/2").times(15);
        Length underside = totalRise.minus(Length.inches(10));
        assertThat(under(totalRise, 15, underside, 15 - down)).isEqualTo(Read.inches(headroom));
    }

    @Test
    void in_front_of_the_first_nosing_one_stands_on_the_floor() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105))
                .under(Length.inches(90), Length.inches(132))
                .stair(14, RUN);
        assertThat(stair.headroom().orElseThrow().clear()).isEqualTo(Length.inches(90));
    }

    @Test
    void over_the_upper_floor_one_stands_on_that() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105))
                .under(Length.inches(190), Length.inches(-20))
                .stair(14, RUN);
        assertThat(stair.headroom().orElseThrow().clear()).isEqualTo(Length.inches(85));
    }

    @Test
    void a_finish_still_to_come_below_lifts_the_walker() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105))
                .finishes(Length.ZERO, Length.inches(1))
                .under(Length.inches(90), Length.inches(132))
                .stair(14, RUN);
        assertThat(stair.headroom().orElseThrow().clear()).isEqualTo(Length.inches(89));
    }
}
