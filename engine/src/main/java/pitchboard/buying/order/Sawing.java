package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Supply;
import pitchboard.buying.need.Need;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.RackPiece;
import pitchboard.buying.yard.Saw;
import pitchboard.buying.yard.Stock;
import pitchboard.measure.Length;
import pitchboard.money.Money;

/**
 * The needs of one stock as a problem in whole numbers, and its plans as boards again.
 *
 * @param sold the lengths to choose from
 * @param rack pieces of this stock
 * @param isPriced whether boards cost what the yard asks; else every board costs its length
 */
record Sawing(
        Stock stock,
        Saw saw,
        List<BoardLength> sold,
        List<RackPiece> rack,
        boolean isPriced,
        List<Lot> lots,
        Ticks ticks) {

    /** Pieces alike: of a need one by one, or two and two. */
    record Lot(Need need, int pieces, int count) {
        Length length() {
            return pieces == 1 ? need.length() : need.nested().orElseThrow().length();
        }
    }

    static Sawing of(
            Stock stock, Saw saw, List<BoardLength> sold, List<RackPiece> rack, boolean isPriced, List<Lot> lots) {
        List<Length> lengths = new ArrayList<>();
        lots.forEach(lot -> lengths.add(lot.length()));
        sold.forEach(each -> lengths.add(stock.realLength(each)));
        rack.forEach(piece -> lengths.add(piece.length()));
        lengths.add(saw.kerf());
        lengths.add(saw.endTrim());
        lengths.add(stock.bad().length());
        rack.forEach(piece -> lengths.add(piece.badEnd()));
        return new Sawing(stock, saw, sold, rack, isPriced, lots, Ticks.of(lengths));
    }

    /** Supplies first the lengths sold, then the rack; demands are the lots. */
    CutProblem problem() {
        List<Demand> demands = lots.stream()
                .map(lot -> new Demand(ticks.count(lot.length()), lot.count()))
                .toList();
        List<Supply> supplies = new ArrayList<>();
        for (BoardLength each : sold) {
            int onHand = each.inStock().orElse(Supply.NO_LIMIT);
            supplies.add(new Supply(Math.max(1, ticks.count(usable(each))), coins(each), onHand));
        }
        for (RackPiece piece : rack) {
            supplies.add(new Supply(Math.max(1, ticks.count(piece.length().minus(bad(piece)))), 0, piece.count()));
        }
        return new CutProblem(demands, supplies, ticks.count(saw.kerf()));
    }

    private Length usable(BoardLength each) {
        return stock.realLength(each).minus(saw.endTrim().times(2)).minus(bad());
    }

    /** What is lost of every board's bad end: all of it as soon as one piece avoids it. */
    private Length bad() {
        return isAvoided() ? stock.bad().length() : Length.ZERO;
    }

    private Length bad(RackPiece piece) {
        return isAvoided() ? piece.badEnd() : Length.ZERO;
    }

    private boolean isAvoided() {
        return lots.stream()
                .anyMatch(lot -> !stock.bad().bears().contains(lot.need().use()));
    }

    private long coins(BoardLength each) {
        return isPriced ? price(each).orElseThrow().coins() : each.nominal().wholeTimes(Length.mm(1));
    }

    private Optional<Money> price(BoardLength each) {
        return stock.priceOf(each);
    }

    Board board(CutBoard cut) {
        boolean bought = cut.supply() < sold.size();
        Board.Origin origin = bought
                ? new Board.Origin.FromYard(sold.get(cut.supply()), price(sold.get(cut.supply())))
                : new Board.Origin.FromRack(rack.get(cut.supply() - sold.size()));
        Length length = bought
                ? stock.realLength(sold.get(cut.supply()))
                : rack.get(cut.supply() - sold.size()).length();
        Length trim = bought ? saw.endTrim() : Length.ZERO;
        Length bad = bought ? bad() : bad(rack.get(cut.supply() - sold.size()));
        List<Cut> cuts = new ArrayList<>();
        Length at = trim;
        for (int demand : cut.demands()) {
            Lot lot = lots.get(demand);
            cuts.add(new Cut(lot.need(), lot.pieces(), at, at.plus(lot.length())));
            at = at.plus(lot.length()).plus(saw.kerf());
        }
        Length left = Length.max(Length.ZERO, length.minus(at));
        Length sound = left.minus(bad);
        return new Board(origin, length, trim, bad, cuts, left, sound.isPositive() && sound.isAtLeast(saw.keepFrom()));
    }
}
