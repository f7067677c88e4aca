package pitchboard.costing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.parts.Part;
import pitchboard.parts.PartId;

/** Finish, gravel and bags by the kilogram, worked by hand. */
final class SundryRulesTest {
    private static Optional<Takeoff> finish(int coats, PartId id) {
        Part part = new Part(id, "piece", "", 2, Length.inches(1, 1, 2), Length.inches(5, 1, 2), Length.inches(40));
        return new Counting(HandWorked.stair().stair(), List.of(part)).finish(coats);
    }

    /** Twice 1 1/2 and 5 1/2 are 14 in around; 14 x 40 x 2 / 144 = 70/9 square feet, and two coats of it. */
    @Test
    void finish_goes_on_all_four_faces_once_for_each_coat() {
        Takeoff two = finish(2, PartId.TREAD).orElseThrow();
        assertThat(two.amount()).isEqualTo(Ratio.of(140, 9));
        assertThat(two.rule()).contains("7.8 square feet, x 2 coats");
    }

    @Test
    void nothing_is_put_on_without_coats_nor_on_the_template() {
        assertThat(finish(0, PartId.TREAD)).isEmpty();
        assertThat(finish(1, PartId.PITCH_BOARD).orElseThrow().amount()).isEqualTo(Ratio.ZERO);
    }

    /** 4 x 4 ft by a third of a foot. */
    @Test
    void gravel_lies_under_the_whole_pad() {
        Pad pad = new Pad(Length.feet(4), Length.feet(4), Length.inches(4), Length.inches(4));
        assertThat(pad.gravelCubicFeet()).isEqualTo(Ratio.of(16, 3));
    }

    /** 25 / 0.45359237 = 55.1156 lb, x 0.0075 = 0.41337 cubic feet; 36.2874 kg are 80 lb and yield 0.60. */
    @Test
    void a_bag_by_the_kilogram_yields_in_proportion() {
        assertThat(Pack.concreteOfKilograms(Ratio.of(25)).times(100_000L).floor())
                .isEqualTo(BigInteger.valueOf(41_336));
        assertThat(Pack.concreteOfKilograms(Ratio.of(45_359_237, 1_250_000))).isEqualTo(Ratio.of(3, 5));
    }

    /** A foot is 0.3048 m: 10.7639 square feet. */
    @Test
    void square_metres_become_square_feet() {
        assertThat(Pack.squareFeetOf(Ratio.ONE).times(10_000L).floor()).isEqualTo(BigInteger.valueOf(107_639));
    }
}
