package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.BoardLength;
import pitchboard.money.Money;

/**
 * A line of the yard's list: so many boards of one length.
 *
 * @param each price of one; empty when nobody gave one
 */
public record YardLine(BoardLength sold, int count, Optional<Money> each) {
    /** The bought boards of an order, each length once, longest first. */
    public static List<YardLine> of(StockOrder order) {
        List<YardLine> lines = new ArrayList<>();
        for (Board board : order.bought()) {
            Board.Origin.FromYard origin = (Board.Origin.FromYard) board.origin();
            int last = lines.size() - 1;
            if (last >= 0 && lines.get(last).sold.equals(origin.sold())) {
                lines.set(last, new YardLine(origin.sold(), lines.get(last).count + 1, origin.price()));
            } else {
                lines.add(new YardLine(origin.sold(), 1, origin.price()));
            }
        }
        return lines;
    }

    public Optional<Money> together() {
        return each.map(money -> money.times(count));
    }
}
