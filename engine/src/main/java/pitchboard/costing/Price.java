package pitchboard.costing;

import java.util.List;
import pitchboard.money.Money;

/**
 * From cost to price.
 *
 * @param direct all lines of cost together
 * @param overhead on it
 * @param profit on both
 * @param taxes one for each kind of line that is taxed
 * @param rounding what rounding up adds
 * @param total what the customer pays
 * @param payments deposit, stages and rest; they add up to the total
 */
public record Price(
        Money direct,
        Money overhead,
        Money profit,
        List<Tax> taxes,
        Money rounding,
        Money total,
        List<Payment> payments) {
    /** @param on the price of the lines of this kind, overhead and profit in it */
    public record Tax(LineKind kind, Money on, Money amount) {}

    public Price {
        taxes = List.copyOf(taxes);
        payments = List.copyOf(payments);
    }

    /** All taxes together. */
    public Money taxTotal() {
        Money sum = Money.none(total.currency());
        for (Tax tax : taxes) {
            sum = sum.plus(tax.amount());
        }
        return sum;
    }
}
