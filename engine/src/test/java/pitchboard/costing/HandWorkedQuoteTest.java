package pitchboard.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Ratio;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/**
 * A quote worked by hand. The ordinary job, 14 risers: 13 treads of one 11 1/4 in board, three stringers, no riser boards,
 * no guard. Lumber bought for 300.00. A pad of 4 ft x 4 ft x 4 in. Two people at 46.00, so 92.00 an hour of the crew.
 *
 * <pre>
 *   lumber                                                        300.00
 *   tread screws  13 x 3 x 2 = 78, + 10 % = 85.8: 1 box of 100     12.80
 *   adhesive      13 x 3 x 11.25 in = 36.56 ft, + 10 % = 40.22:
 *                 1 cartridge of 28 oz (85.8 ft); two of 10 oz cost 10.40    9.90
 *   concrete      5.33 cubic feet, + 10 % = 5.87: 10 bags of 0.6   69.50
 *   first stringer  1.25 h     115.00     further ones  2 x 0.5 h  92.00
 *   hanging      3 x 0.5 h     138.00     treads      13 x 0.25 h 299.00
 *   pad                4 h     368.00     setting up          2 h 184.00
 *   delivery                                                       60.00
 *                                                        direct  1648.20
 *   overhead 12 %                                                 197.78   (197.784)
 *   profit 10 % of 1845.98                                        184.60   (184.598)
 *   tax 7 % on lumber   300.00 x 1.12 x 1.10 = 369.60              25.87   (25.872)
 *   tax 7 % on sundries  92.20 x 1.232       = 113.59               7.95   (7.951...)
 *                                                                2064.40
 *   rounded up to 5.00                                              0.60
 *                                                        total   2065.00
 *   deposit 30 % 619.50, 40 % when the timber is on site 826.00, rest 619.50
 * </pre>
 */
final class HandWorkedQuoteTest {
    private static Costing costing(Optional<Money> lumber, List<Pack> packs, Day on) {
        return Estimator.cost(List.of(HandWorked.stair()), HandWorked.lumber(lumber), HandWorked.rates(packs), on);
    }

    private static Costing worked() {
        return costing(Optional.of(HandWorked.usd("300")), HandWorked.packs(), HandWorked.QUOTED);
    }

    @Test
    void every_line_is_as_worked() {
        assertThat(worked().lines())
                .extracting(
                        line -> line.what() + " " + line.cost().orElseThrow().digits())
                .containsExactly(
                        "2x12 300.00",
                        "tread screws 12.80",
                        "adhesive 9.90",
                        "concrete 69.50",
                        "first stringer 115.00",
                        "further stringer 92.00",
                        "hanging a stringer 138.00",
                        "tread 299.00",
                        "pad 368.00",
                        "setting up 184.00",
                        "delivery 60.00");
    }

    @Test
    void the_price_is_as_worked() {
        Price price = worked().price().orElseThrow();
        assertThat(price.direct()).isEqualTo(HandWorked.usd("1648.20"));
        assertThat(price.overhead()).isEqualTo(HandWorked.usd("197.78"));
        assertThat(price.profit()).isEqualTo(HandWorked.usd("184.60"));
        assertThat(price.taxes())
                .containsExactly(
                        new Price.Tax(LineKind.LUMBER, HandWorked.usd("369.60"), HandWorked.usd("25.87")),
                        new Price.Tax(LineKind.SUNDRIES, HandWorked.usd("113.59"), HandWorked.usd("7.95")));
        assertThat(price.rounding()).isEqualTo(HandWorked.usd("0.60"));
        assertThat(price.total()).isEqualTo(HandWorked.usd("2065.00"));
    }

    @Test
    void payments_add_up_to_the_price() {
        assertThat(worked().price().orElseThrow().payments())
                .containsExactly(
                        new Payment("with the order", HandWorked.usd("619.50")),
                        new Payment("when the timber is on site", HandWorked.usd("826.00")),
                        new Payment("when the work is done", HandWorked.usd("619.50")));
    }

    @Test
    void each_line_shows_its_rule_and_what_is_from_memory() {
        assertThat(worked().lines())
                .extracting(CostLine::working)
                .contains(
                        "78 screws + waste = 85.8; 1 of box of 100 at 12.80",
                        "13 x 0.25 h x 2 people at 46.00",
                        "1 x 1.25 h (from memory) x 2 people at 46.00");
        assertThat(worked().takeoffs().get(0).rule())
                .isEqualTo("13 tread boards x 3 stringers x 2 (2 a crossing, from memory)");
    }

    @Test
    void what_has_no_price_makes_the_quote_incomplete_and_is_never_zero() {
        List<Pack> packs = HandWorked.packs();
        packs.removeIf(pack -> pack.kind() == Sundry.CONCRETE);
        Costing costing = costing(Optional.of(HandWorked.usd("300")), packs, HandWorked.QUOTED);
        assertThat(costing.isComplete()).isFalse();
        assertThat(costing.missing())
                .containsExactly("concrete: 5.33 cubic feet + waste = 5.87; the rates have no price for it");
        assertThat(costing(Optional.empty(), HandWorked.packs(), HandWorked.QUOTED)
                        .missing())
                .containsExactly("2x12: the price list has no price");
    }

    /** The yard's prices are of 3 May, the rates of 1 April; 60 days are trusted, the limit itself included. */
    @Test
    void old_prices_are_flagged_by_their_age() {
        assertThat(worked().stale()).isEmpty();
        Optional<Money> lumber = Optional.of(HandWorked.usd("300"));
        assertThat(costing(lumber, HandWorked.packs(), new Day(2027, 5, 31)).stale())
                .isEmpty();
        assertThat(costing(lumber, HandWorked.packs(), new Day(2027, 6, 1)).stale())
                .containsExactly("prices of our rates are 61 days old on 2027-06-01; ask again");
        assertThat(costing(lumber, HandWorked.packs(), new Day(2027, 7, 3)).stale())
                .contains("prices of the yard are 61 days old on 2027-07-03; ask again");
        assertThat(costing(lumber, HandWorked.packs(), new Day(2027, 5, 2)).stale())
                .containsExactly("prices of the yard are of 2027-05-03, after the day of the quote");
    }

    @Test
    void two_currencies_are_refused() {
        Money euro = new Money(BigDecimal.ONE, new Currency("EUR", 2));
        Rates other = new Rates(
                "r",
                HandWorked.QUOTED,
                euro.currency(),
                1,
                euro,
                Map.of(),
                Ratio.ZERO,
                List.of(),
                Optional.empty(),
                0,
                List.of(),
                Ratio.ZERO,
                Ratio.ZERO,
                Map.of(),
                euro,
                Ratio.ZERO,
                List.of(),
                30,
                60,
                new Rates.Wording(List.of(), List.of(), List.of()));
        assertThatThrownBy(() -> Estimator.cost(
                        List.of(HandWorked.stair()), HandWorked.lumber(Optional.empty()), other, HandWorked.QUOTED))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("prices in USD, rates in EUR");
    }
}
