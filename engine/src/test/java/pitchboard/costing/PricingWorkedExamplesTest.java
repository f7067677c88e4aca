package pitchboard.costing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Rebuilt;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/** From lines to a price, worked by hand, and what holds for any lines and rates. */
final class PricingWorkedExamplesTest {
    private static final List<LineKind> KINDS = List.of(LineKind.values());
    private static final Rates BASE = HandWorked.rates(HandWorked.packs());

    private static CostLine line(LineKind kind, String cost) {
        return new CostLine(kind, kind.words(), "", Optional.of(HandWorked.usd(cost)));
    }

    private static Rates rates(String overhead, String profit, Map<LineKind, Ratio> taxes, String roundTo) {
        Rates shared = Rebuilt.with(Rebuilt.with(BASE, "overhead", share(overhead)), "profit", share(profit));
        return Rebuilt.with(Rebuilt.with(shared, "taxes", taxes), "roundTo", HandWorked.usd(roundTo));
    }

    private static Ratio share(String perCent) {
        long hundredths = new BigDecimal(perCent).movePointRight(2).longValueExact();
        return Ratio.of(hundredths, 10000);
    }

    /**
     * Worked by hand. Lumber 300, sundries 92.20, labour 1196, extras 60: together 1648.20. A kind is taxed on its cost with
     * overhead and profit on it, rounded once.
     *
     * <pre>
     *   12 % and 10 %: x 1.232. lumber 369.60, sundries 113.5904, labour 1473.472, extras 73.92
     *   20 % and 15 %: x 1.38.  lumber 414.00, sundries 127.236,  labour 1650.48,  extras 82.80
     * </pre>
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # overhead, profit, kind taxed, rate, taxed on, tax
            12, 10, LUMBER,   7,    369.60,  25.87
            12, 10, SUNDRIES, 7,    113.59,   7.95
            12, 10, LABOUR,   8.25, 1473.47, 121.56
            12, 10, EXTRAS,   5,    73.92,    3.70
            20, 15, LUMBER,   6.25, 414.00,  25.88
            20, 15, SUNDRIES, 6.25, 127.24,   7.95
            20, 15, LABOUR,   20,   1650.48, 330.10
            20, 15, EXTRAS,   20,   82.80,   16.56
            0,  0,  SUNDRIES, 5,    92.20,    4.61
            """)
    void each_kind_of_line_is_taxed_on_its_price(
            String overhead, String profit, LineKind kind, String rate, String on, String tax) {
        List<CostLine> lines = List.of(
                line(LineKind.LUMBER, "300"),
                line(LineKind.SUNDRIES, "92.20"),
                line(LineKind.LABOUR, "1196"),
                line(LineKind.EXTRAS, "60"));
        Price price = Pricing.price(lines, rates(overhead, profit, Map.of(kind, share(rate)), "0.01"));
        assertThat(price.taxes()).containsExactly(new Price.Tax(kind, HandWorked.usd(on), HandWorked.usd(tax)));
        assertThat(price.taxTotal()).isEqualTo(HandWorked.usd(tax));
    }

    /** A price that is a multiple already is not raised; a cent above it is. */
    @ParameterizedTest
    @CsvSource({
        "100.00, 5, 100.00",
        "100.01, 5, 105.00",
        "104.99, 5, 105.00",
        "99.95, 0.05, 99.95",
        "99.96, 0.05, 100.00",
        "1, 1000, 1000.00"
    })
    void the_price_is_rounded_up(String cost, String roundTo, String total) {
        Price price = Pricing.price(List.of(line(LineKind.LUMBER, cost)), rates("0", "0", Map.of(), roundTo));
        assertThat(price.total()).isEqualTo(HandWorked.usd(total));
        assertThat(price.rounding()).isEqualTo(HandWorked.usd(total).minus(HandWorked.usd(cost)));
    }

    /** 30 and 40 of a hundred of 0.05: half a cent goes up, and the last payment takes what is left. */
    @Test
    void payments_of_very_little_add_up_too() {
        Price price = Pricing.price(List.of(line(LineKind.LUMBER, "0.05")), rates("0", "0", Map.of(), "0.01"));
        assertThat(price.payments())
                .extracting(payment -> payment.amount().digits())
                .containsExactly("0.02", "0.02", "0.01");
    }

    @Test
    void a_price_is_the_sum_of_its_parts_to_the_cent_whatever_the_lines_and_rates() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            List<CostLine> lines = new ArrayList<>();
            Money sum = Money.none(HandWorked.USD);
            for (int i = random.nextInt(30); i >= 0; i--) {
                Money cost = Money.ofCoins(random.nextInt(100_000), HandWorked.USD);
                sum = sum.plus(cost);
                LineKind kind = KINDS.get(random.nextInt(KINDS.size()));
                lines.add(new CostLine(kind, "", "", Optional.of(cost)));
            }
            Map<LineKind, Ratio> taxes = new EnumMap<>(LineKind.class);
            for (LineKind kind : LineKind.values()) {
                taxes.put(kind, Ratio.of(random.nextInt(3000), 10000));
            }
            Rates rates = Rebuilt.with(
                    Rebuilt.with(rates("0", "0", taxes, "0.01"), "overhead", Ratio.of(random.nextInt(9000), 10000)),
                    "profit",
                    Ratio.of(random.nextInt(9000), 10000));
            rates = Rebuilt.with(rates, "roundTo", Money.ofCoins(1 + random.nextInt(1000), HandWorked.USD));
            holds(seed, Pricing.price(lines, rates), sum, rates);
        }
    }

    private static void holds(long seed, Price price, Money sum, Rates rates) {
        assertThat(price.direct()).as("seed %s", seed).isEqualTo(sum);
        Money whole = price.direct().plus(price.overhead()).plus(price.profit()).plus(price.taxTotal());
        assertThat(whole.plus(price.rounding())).as("seed %s", seed).isEqualTo(price.total());
        assertThat(price.rounding().isNegative()).isFalse();
        assertThat(price.rounding().compareTo(rates.roundTo())).isNegative();
        assertThat(price.total().coins() % rates.roundTo().coins()).isZero();
        Money paid = Money.none(HandWorked.USD);
        for (Payment payment : price.payments()) {
            paid = paid.plus(payment.amount());
        }
        assertThat(paid).as("seed %s", seed).isEqualTo(price.total());
    }
}
