package pitchboard.buying.order;

import java.util.List;
import java.util.Optional;
import pitchboard.buying.cutting.Proof;
import pitchboard.buying.need.Need;
import pitchboard.buying.yard.Stock;
import pitchboard.money.Money;

/**
 * The boards of one stock.
 *
 * @param needs the pieces cut from them
 * @param spliced pieces that no board is long enough for; their parts are among the needs
 * @param boards longest first, boards cut alike together
 * @param cost of all boards; empty when the yard gave no price for this stock
 * @param leastCost no plan costs less; empty like the cost
 */
public record StockOrder(
        Stock stock,
        List<Need> needs,
        List<Spliced> spliced,
        List<Board> boards,
        Optional<Money> cost,
        Optional<Money> leastCost,
        Proof proof) {
    public StockOrder {
        needs = List.copyOf(needs);
        spliced = List.copyOf(spliced);
        boards = List.copyOf(boards);
    }

    StockOrder splicing(List<Spliced> made) {
        return new StockOrder(stock, needs, made, boards, cost, leastCost, proof);
    }

    public List<Board> bought() {
        return boards.stream().filter(Board::isBought).toList();
    }
}
