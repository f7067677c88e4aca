package pitchboard.costing;

import java.util.List;
import java.util.Optional;
import pitchboard.money.Day;

/**
 * A job costed.
 *
 * @param quotedOn the day of the quote, as given
 * @param price empty while a price is missing
 * @param missing what has no price, in words
 * @param stale which prices are older than the crew trusts them, in words
 */
public record Costing(
        Rates rates,
        Day quotedOn,
        List<Takeoff> takeoffs,
        List<CostLine> lines,
        Optional<Price> price,
        List<String> missing,
        List<String> stale) {
    public Costing {
        takeoffs = List.copyOf(takeoffs);
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
        stale = List.copyOf(stale);
    }

    public boolean isComplete() {
        return price.isPresent();
    }
}
