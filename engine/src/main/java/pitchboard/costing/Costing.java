package pitchboard.costing;

import java.util.List;
import java.util.Optional;
import pitchboard.money.Day;
import pitchboard.money.Money;

/**
 * A job costed.
 *
 * @param quotedOn the day of the quote, as given
 * @param packs what is bought of sundries, each once
 * @param work what there is to do, each task once
 * @param price empty while a price is missing
 * @param missing what has no price, in words
 * @param stale which prices are older than the crew trusts them, in words
 */
public record Costing(
        Rates rates,
        Day quotedOn,
        List<Takeoff> takeoffs,
        List<PackOrder> packs,
        List<Work> work,
        List<CostLine> lines,
        Optional<Price> price,
        List<String> missing,
        List<String> stale) {
    public Costing {
        takeoffs = List.copyOf(takeoffs);
        packs = List.copyOf(packs);
        work = List.copyOf(work);
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
        stale = List.copyOf(stale);
    }

    /** All lines of a kind together; empty while one of them has no price. */
    public Optional<Money> sum(LineKind kind) {
        Money sum = Money.none(rates.currency());
        for (CostLine line : lines) {
            if (line.kind() == kind) {
                if (line.cost().isEmpty()) {
                    return Optional.empty();
                }
                sum = sum.plus(line.cost().get());
            }
        }
        return Optional.of(sum);
    }

    public boolean isComplete() {
        return price.isPresent();
    }
}
