package pitchboard.costing;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/** From lines of cost to the price: overhead, profit, taxes, rounding, payments. Every step is rounded to the coin. */
final class Pricing {
    private final Rates rates;

    private Pricing(Rates rates) {
        this.rates = rates;
    }

    /** @param lines each with its cost */
    static Price price(List<CostLine> lines, Rates rates) {
        return new Pricing(rates).price(lines);
    }

    private Price price(List<CostLine> lines) {
        Money direct = sum(lines);
        Money overhead = direct.times(rates.overhead());
        Money profit = direct.plus(overhead).times(rates.profit());
        List<Price.Tax> taxes = taxes(lines);
        Money before = direct.plus(overhead).plus(profit);
        for (Price.Tax tax : taxes) {
            before = before.plus(tax.amount());
        }
        Money total = roundedUp(before);
        return new Price(direct, overhead, profit, taxes, total.minus(before), total, payments(total));
    }

    private Money sum(List<CostLine> lines) {
        Money sum = Money.none(rates.currency());
        for (CostLine line : lines) {
            sum = sum.plus(line.cost().orElseThrow());
        }
        return sum;
    }

    /** A kind of line is taxed on its price: its cost with overhead and profit on it. */
    private List<Price.Tax> taxes(List<CostLine> lines) {
        Ratio onTop = Ratio.ONE.plus(rates.overhead()).times(Ratio.ONE.plus(rates.profit()));
        List<Price.Tax> taxes = new ArrayList<>();
        for (LineKind kind : LineKind.values()) {
            Ratio rate = rates.taxOf(kind);
            Money cost = sum(lines.stream().filter(line -> line.kind() == kind).toList());
            if (rate.signum() > 0 && !cost.isZero()) {
                taxes.add(new Price.Tax(kind, cost.times(onTop), cost.times(onTop.times(rate))));
            }
        }
        return taxes;
    }

    private Money roundedUp(Money money) {
        long step = rates.roundTo().coins();
        return Money.ofCoins(-Math.floorDiv(-money.coins(), step) * step, rates.currency());
    }

    private List<Payment> payments(Money total) {
        List<Payment> payments = new ArrayList<>();
        Money rest = total;
        if (rates.deposit().signum() > 0) {
            Money deposit = total.times(rates.deposit());
            payments.add(new Payment("with the order", deposit));
            rest = rest.minus(deposit);
        }
        for (Stage stage : rates.stages()) {
            Money due = total.times(stage.share());
            payments.add(new Payment(stage.when(), due));
            rest = rest.minus(due);
        }
        if (!rest.isZero()) {
            payments.add(new Payment("when the work is done", rest));
        }
        return payments;
    }
}
