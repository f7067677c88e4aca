package pitchboard.strength.fasteners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.Stress;

final class FastenerLawsTest {
    private static final Fastener LAG = Fastener.lagScrew(new Diameter(0.5)).orThrow();
    private static final Fastener NAIL = Fastener.nail(new Diameter(0.148)).orThrow();
    private static final Fastener BOLT = Fastener.bolt(new Diameter(0.5)).orThrow();

    @RepeatedTest(60)
    void more_wood_along_the_load_never_carries_less(RepetitionInfo repetition) {
        Random chance = new Random(repetition.getCurrentRepetition());
        Fastener bolt =
                Fastener.bolt(new Diameter(0.25 + 0.125 * chance.nextInt(7))).orThrow();
        double gravity = 0.35 + 0.3 * chance.nextDouble();
        double angle = 90 * chance.nextDouble();
        Length thin = Length.inches(1 + chance.nextInt(3), chance.nextInt(8), 8);
        Length thick = thin.plus(Length.inches(0, 1 + chance.nextInt(16), 8));
        for (YieldLimit.Shear shear : YieldLimit.Shear.values()) {
            double less = pounds(bolt, gravity, thin, thin, angle, shear);
            assertThat(pounds(bolt, gravity, thick, thin, angle, shear)).isGreaterThanOrEqualTo(less - 1e-9);
            assertThat(pounds(bolt, gravity, thin, thick, angle, shear)).isGreaterThanOrEqualTo(less - 1e-9);
            assertThat(pounds(bolt, Math.min(0.73, gravity + 0.05), thin, thin, angle, shear))
                    .isGreaterThanOrEqualTo(less - 1e-9);
            assertThat(pounds(bolt, gravity, thin, thin, Math.min(90, angle + 10), shear))
                    .isLessThanOrEqualTo(less + 1e-9);
        }
    }

    private static double pounds(
            Fastener fastener, double gravity, Length main, Length side, double angle, YieldLimit.Shear shear) {
        Member one = Member.wood(gravity, fastener, main, angle).orThrow();
        Member other = Member.wood(gravity, fastener, side, angle).orThrow();
        return Lateral.of(fastener, one, other, shear).capacity().value().pounds();
    }

    @Test
    void double_shear_has_four_modes() {
        Member wood = Member.wood(0.5, BOLT, Length.inches(1, 1, 2), 0).orThrow();
        assertThat(Lateral.of(BOLT, wood, wood, YieldLimit.Shear.DOUBLE).modes())
                .containsOnlyKeys(Mode.IM, Mode.IS, Mode.IIIS, Mode.IV);
    }

    /** Steel of the two kinds, values as quoted from NDS 2018: harder steel never carries less. */
    @Test
    void steel_side_plates_are_reckoned_with_their_own_bearing() {
        Member wood = Member.wood(0.5, BOLT, Length.inches(3, 1, 2), 0).orThrow();
        double hot = Lateral.of(BOLT, wood, Member.hotRolledSteel(Length.inches(0, 1, 4)), YieldLimit.Shear.SINGLE)
                .capacity()
                .value()
                .pounds();
        double cold = Lateral.of(BOLT, wood, Member.coldFormedSteel(Length.inches(0, 1, 4)), YieldLimit.Shear.SINGLE)
                .capacity()
                .value()
                .pounds();
        assertThat(hot).isGreaterThanOrEqualTo(cold);
    }

    @ParameterizedTest
    @CsvSource({"0", "90"})
    void all_shear_and_all_pull_are_themselves(double degrees) {
        Force pull = new Force(900);
        Force shear = new Force(400);
        double expected = degrees == 0 ? 400 : 900;
        assertThat(Combined.screw(pull, shear, degrees).newtons()).isCloseTo(expected, within(1e-9));
        assertThat(Combined.nail(pull, shear, degrees).newtons()).isCloseTo(expected, within(1e-9));
    }

    /** Both shares of a nail add up to one: at 45° each is 1/√2 of the load. */
    @Test
    void the_shares_of_a_nail_add_up_to_one() {
        double load = Combined.nail(new Force(900), new Force(400), 45).newtons();
        double part = load / Math.sqrt(2);
        assertThat(part / 900 + part / 400).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.24", "1.01"})
    void a_bolt_out_of_the_tables_cannot_be_told(double inches) {
        assertThat(Fastener.bolt(new Diameter(inches))).isInstanceOf(Answer.Unknown.class);
    }

    @Test
    void what_has_no_table_cannot_be_told() {
        assertThat(Fastener.nail(new Diameter(0.098))).isInstanceOf(Answer.Unknown.class);
        assertThat(Fastener.nail(new Diameter(0.376))).isInstanceOf(Answer.Unknown.class);
        assertThat(Fastener.woodScrew(11)).isInstanceOf(Answer.Unknown.class);
        assertThat(Fastener.lagScrew(new Diameter(0.3))).isInstanceOf(Answer.Unknown.class);
        assertThat(DowelBearing.atAngle(0.30, new Diameter(0.5), 0)).isInstanceOf(Answer.Unknown.class);
        assertThat(DowelBearing.atAngle(0.31, new Diameter(0.5), 0)).isInstanceOf(Answer.Known.class);
        assertThat(DowelBearing.atAngle(0.74, new Diameter(0.5), 0)).isInstanceOf(Answer.Unknown.class);
        assertThat(DowelBearing.atAngle(0.5, new Diameter(0.5), 91)).isInstanceOf(Answer.Unknown.class);
        assertThat(Pulled.out(BOLT, 0.5, Length.inches(2), Pulled.Grain.SIDE)).isInstanceOf(Answer.Unknown.class);
        assertThat(Pulled.out(NAIL, 0.5, Length.inches(2), Pulled.Grain.END)).isInstanceOf(Answer.Unknown.class);
    }

    /** 0.75 of side grain, NDS 2018 12.2.1 as quoted. */
    @Test
    void a_lag_screw_in_end_grain_holds_three_quarters() {
        double side = Pulled.out(LAG, 0.5, Length.inches(4), Pulled.Grain.SIDE)
                .orThrow()
                .value()
                .pounds();
        double end = Pulled.out(LAG, 0.5, Length.inches(4), Pulled.Grain.END)
                .orThrow()
                .value()
                .pounds();
        assertThat(end).isCloseTo(0.75 * side, within(1e-9));
    }

    /** 10 D for nails: 1.48 in of a 10d; 6 D is the least. */
    @ParameterizedTest
    @CsvSource({"1.48, 1", "1.4, 0.945946", "0.888, 0.6"})
    void a_nail_that_goes_in_less_carries_less(String inches, double factor) {
        assertThat(Adjustment.depth(NAIL, PrintedCells.inches(inches)).orThrow().value())
                .isCloseTo(factor, within(1e-6));
    }

    @Test
    void a_nail_that_hardly_goes_in_cannot_be_told() {
        Answer<Factor> answer = Adjustment.depth(NAIL, PrintedCells.inches("0.88"));
        String because = answer.match(known -> "", reason -> reason);
        assertThat(because).contains("5.95 diameters; at least 6");
        assertThat(Adjustment.depth(LAG, Length.inches(2))).isInstanceOf(Answer.Known.class);
        assertThat(Adjustment.depth(LAG, Length.inches(1, 15, 16))).isInstanceOf(Answer.Unknown.class);
    }

    @ParameterizedTest
    @CsvSource({
        "false, false, 1, 1, 1, 1",
        "false, true, 0.7, 0.7, 0.25, 0.7",
        "true, false, 1, 0.4, 0.25, 1",
        "true, true, 0.7, 0.7, 1, 0.7"
    })
    void wetness_weakens_as_the_book_says(
            boolean made, boolean used, double one, double rows, double nailPulled, double lagPulled) {
        Wetness wetness = new Wetness(made, used);
        assertThat(wetness.sheared(LAG, Wetness.Rows.FREE_TO_SHRINK).value()).isEqualTo(one);
        assertThat(wetness.sheared(LAG, Wetness.Rows.SEVERAL).value()).isEqualTo(rows);
        assertThat(wetness.pulled(NAIL).value()).isEqualTo(nailPulled);
        assertThat(wetness.pulled(LAG).value()).isEqualTo(lagPulled);
        assertThat(wetness.sheared(NAIL, Wetness.Rows.SEVERAL).value()).isEqualTo(made || used ? 0.7 : 1);
    }

    private static Layout layout(Layout.Direction direction, String end, String loaded, String row, String rows) {
        return new Layout(
                new Diameter(0.5),
                direction,
                PrintedCells.inches(end),
                PrintedCells.inches(loaded),
                PrintedCells.inches("0.75"),
                PrintedCells.inches(row),
                PrintedCells.inches(rows),
                Length.inches(3));
    }

    /** D 1/2 in: end 7 D = 3 1/2 in for all of it and half for half; spacing 4 D for all and 3 D at least. */
    @ParameterizedTest
    @CsvSource({
        "ALONG_TOWARD_END, 3.5, 0.75, 2, 0, 1",
        "ALONG_TOWARD_END, 1.75, 0.75, 2, 0, 0.5",
        "ALONG_FROM_END, 2, 0.75, 1.5, 0, 0.75",
        "ACROSS, 2, 2, 2, 2.5, 1"
    })
    void distances_give_their_share(
            Layout.Direction direction, String end, String loaded, String row, String rows, double share) {
        assertThat(layout(direction, end, loaded, row, rows).factor().orThrow().value())
                .isCloseTo(share, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "ALONG_TOWARD_END, 1.74, 0.75, 2, 0",
        "ALONG_TOWARD_END, 3.5, 0.74, 2, 0",
        "ALONG_FROM_END, 2, 0.75, 1.49, 0",
        "ACROSS, 2, 1.99, 2, 2.5",
        "ACROSS, 2, 2, 2, 2.49"
    })
    void a_distance_below_the_least_cannot_be_told(
            Layout.Direction direction, String end, String loaded, String row, String rows) {
        Layout layout = layout(direction, end, loaded, row, rows);
        assertThat(layout.tooClose()).hasSize(1);
        assertThat(layout.factor()).isInstanceOf(Answer.Unknown.class);
    }

    @Test
    void a_capacity_multiplies_its_factors_and_keeps_the_idle_ones() {
        Member wood = Member.wood(0.5, BOLT, Length.inches(1, 1, 2), 0).orThrow();
        Capacity plain = Lateral.of(BOLT, wood, wood, YieldLimit.Shear.SINGLE).capacity();
        Capacity used = plain.with(
                new Wetness(false, true).sheared(BOLT, Wetness.Rows.FREE_TO_SHRINK),
                Wetness.DRY.sheared(BOLT, Wetness.Rows.SEVERAL));
        assertThat(used.value().newtons()).isCloseTo(0.7 * plain.value().newtons(), within(1e-9));
        assertThat(used.factors()).hasSize(2);
        assertThat(used.mode()).contains(Mode.II);
    }

    @RepeatedTest(20)
    void a_longer_row_never_shares_better(RepetitionInfo repetition) {
        int inRow = repetition.getCurrentRepetition();
        assertThat(cg(inRow + 1)).isLessThanOrEqualTo(cg(inRow) + 1e-12);
        assertThat(cg(inRow)).isBetween(0.0, 1.0);
    }

    private static double cg(int inRow) {
        Stress modulus = Stress.psi(1.4e6);
        return new Group(inRow, Length.inches(4), new Diameter(0.75), modulus, 5000, modulus, 8000, false)
                .factor()
                .orThrow()
                .value();
    }
}
