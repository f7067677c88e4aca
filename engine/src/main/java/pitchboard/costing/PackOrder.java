package pitchboard.costing;

import java.util.Optional;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/**
 * How much of a sundry is bought, and in what.
 *
 * @param amount as counted, in the sundry's unit
 * @param withWaste the same with waste
 * @param pack the one size that does it for least; empty when none has a price
 * @param packs how many whole ones; 0 without a pack
 */
public record PackOrder(Sundry kind, Ratio amount, Ratio withWaste, Optional<Pack> pack, long packs) {
    /** To the coin; empty without a pack. */
    public Optional<Money> cost() {
        return pack.map(each -> each.price().times(packs).toCoin());
    }
}
