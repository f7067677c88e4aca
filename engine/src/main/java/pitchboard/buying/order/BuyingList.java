package pitchboard.buying.order;

import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.Yard;
import pitchboard.money.Money;

/**
 * All that is to be bought of a yard.
 *
 * @param unmet what it cannot sell us; the list is not complete while there is any
 */
public record BuyingList(Yard yard, List<StockOrder> orders, List<Unmet> unmet) {
    public BuyingList {
        orders = List.copyOf(orders);
        unmet = List.copyOf(unmet);
    }

    /** Whether every piece is met and every board has a price. */
    public boolean isComplete() {
        return unmet.isEmpty() && orders.stream().allMatch(order -> order.cost().isPresent());
    }

    /** The boards that have a price, together; not the whole cost unless the list is complete. */
    public Money costSoFar() {
        Money sum = Money.none(yard.currency());
        for (StockOrder order : orders) {
            Optional<Money> cost = order.cost();
            sum = cost.map(sum::plus).orElse(sum);
        }
        return sum;
    }

    /** Whether every order is proved to be the cheapest. */
    public boolean isProved() {
        return orders.stream().allMatch(order -> order.proof().cheapest());
    }
}
