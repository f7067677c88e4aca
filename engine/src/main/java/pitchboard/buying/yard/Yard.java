package pitchboard.buying.yard;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Day;

/**
 * A price list and the rack.
 *
 * @param name of the yard
 * @param givenBy who gave the prices; may be empty
 * @param date when the prices were given
 * @param units what the list is written in
 * @param splicing which pieces need not come from one board
 */
public record Yard(
        String name,
        String givenBy,
        Day date,
        Currency currency,
        Tape.Units units,
        Saw saw,
        Splicing splicing,
        List<Stock> stocks,
        List<RackPiece> rack) {
    public Yard {
        stocks = List.copyOf(stocks);
        rack = List.copyOf(rack);
    }

    public Optional<Stock> findStock(String stock) {
        return stocks.stream().filter(each -> each.name().equals(stock)).findFirst();
    }
}
