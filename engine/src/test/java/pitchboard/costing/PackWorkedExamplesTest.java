package pitchboard.costing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/** What packs hold, and how many a job takes. */
final class PackWorkedExamplesTest {
    /** Computed: 1 fl oz is 1.8047 cubic inches, over the area of a bead 1/4 in across. To a tenth of a foot. */
    @ParameterizedTest
    @CsvSource({"10, 30.6", "28, 85.8", "29, 88.8"})
    void feet_of_quarter_inch_bead_in_a_cartridge(long ounces, String feet) {
        assertThat(Decimals.fixed(Pack.beadOf(Ratio.of(ounces)), 1)).isEqualTo(feet);
    }

    /** A trade reference for estimators: 40 lb 0.30 and 80 lb 0.60 cubic feet; 60 lb by proportion. */
    @ParameterizedTest
    @CsvSource({"40, 0.30", "60, 0.45", "80, 0.60"})
    void cubic_feet_of_a_bag(long pounds, String cubicFeet) {
        assertThat(Decimals.fixed(Pack.concreteOf(Ratio.of(pounds)), 2)).isEqualTo(cubicFeet);
    }

    /** Computed from the same reference: 90, 60 and 45 bags to the cubic yard. */
    @ParameterizedTest
    @CsvSource({"40, 90", "60, 60", "80, 45"})
    void bags_to_a_cubic_yard(long pounds, long bags) {
        assertThat(bags(Ratio.of(27), pounds)).isEqualTo(bags);
    }

    /** Computed from the same reference, to whole bags, without and with ten in the hundred for waste. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # length ft, width in, thickness in, waste in the hundred, bags of 80 lb, bags of 60 lb
            4, 48, 4,  0,  9, 12
            4, 48, 4, 10, 10, 14
            3, 42, 4,  0,  6,  8
            """)
    void bags_for_a_pad(long length, long width, long thickness, long waste, long of80, long of60) {
        Pad pad = new Pad(Length.feet(length), Length.inches(width), Length.inches(thickness), Length.ZERO);
        Ratio needed = pad.cubicFeet().times(Ratio.of(100 + waste, 100));
        assertThat(bags(needed, 80)).isEqualTo(of80);
        assertThat(bags(needed, 60)).isEqualTo(of60);
    }

    private static long bags(Ratio cubicFeet, long pounds) {
        BigInteger down =
                cubicFeet.dividedBy(Pack.concreteOf(Ratio.of(pounds))).negated().floor();
        return down.negate().longValueExact();
    }
}
