package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pitchboard.buying.need.Need;
import pitchboard.buying.yard.RackPiece;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Length;
import pitchboard.money.Money;

/**
 * Walks over a finished list with the saw, board by board, in lengths and money as they stand on the papers. It shares no
 * code with the planner, nor with what turns plans into boards: every piece is counted, every kerf, every coin.
 */
public final class ListChecker {
    private final BuyingList list;
    private final Yard yard;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Integer> cut = new LinkedHashMap<>();
    private final Map<RackPiece, Integer> taken = new LinkedHashMap<>();

    private ListChecker(BuyingList list) {
        this.list = list;
        yard = list.yard();
    }

    /** Everything wrong with the list, in words for the log; empty when it yields these needs and adds up. */
    public static List<String> faults(List<Need> needs, BuyingList list) {
        ListChecker checker = new ListChecker(list);
        list.orders().forEach(checker::order);
        needs.forEach(checker::need);
        checker.onHand();
        return List.copyOf(checker.faults);
    }

    private void order(StockOrder order) {
        Money sum = Money.none(yard.currency());
        for (Board board : order.boards()) {
            walk(order, board);
            sum = board.price().map(sum::plus).orElse(sum);
            if (board.origin() instanceof Board.Origin.FromRack rack) {
                taken.merge(rack.piece(), 1, Integer::sum);
            }
        }
        if (order.cost().isPresent() && !order.cost().get().equals(sum)) {
            faults.add(order.stock().name() + ": boards of " + sum + " are said to cost "
                    + order.cost().get());
        }
        for (Spliced spliced : order.spliced()) {
            splice(spliced);
        }
    }

    /** Cuts follow each other with a kerf between, clear of trim, bad end and the far end's trim. */
    private void walk(StockOrder order, Board board) {
        Length free = board.trim();
        for (Cut each : board.cuts()) {
            Length needed = each.pieces() == 1
                    ? each.need().length()
                    : each.need().nested().orElseThrow().length();
            if (each.from().isLessThan(free)) {
                faults.add(each.need().mark() + " begins before the saw is through");
            }
            if (!each.to().minus(each.from()).equals(needed)) {
                faults.add(each.need().mark() + " is cut to another length");
            }
            free = each.to().plus(yard.saw().kerf());
            cut.merge(each.need().mark(), each.pieces(), Integer::sum);
        }
        Length end = free.minus(yard.saw().kerf());
        Length last = board.length().minus(board.trim()).minus(board.bad());
        if (!board.cuts().isEmpty() && end.isMoreThan(last)) {
            faults.add(order.stock().name() + ": a board is cut beyond its sound part");
        }
        boolean avoids = board.cuts().stream()
                .anyMatch(each ->
                        !order.stock().bad().bears().contains(each.need().use()));
        if (avoids && board.bad().isLessThan(badEnd(order, board))) {
            faults.add(order.stock().name() + ": a bad end is not left out");
        }
    }

    private static Length badEnd(StockOrder order, Board board) {
        return board.origin() instanceof Board.Origin.FromRack rack
                ? rack.piece().badEnd()
                : order.stock().bad().length();
    }

    private void splice(Spliced spliced) {
        Length sum = Length.ZERO;
        for (Need part : spliced.parts()) {
            sum = sum.plus(part.length());
        }
        Length laps = yard.splicing().lap().times((long) spliced.joints().size());
        if (!sum.minus(laps).equals(spliced.whole().length())
                || !spliced.whole().joints().containsAll(spliced.joints())) {
            faults.add(spliced.whole().mark() + " is not the sum of its parts");
        }
        boolean all = spliced.parts().stream()
                .allMatch(part ->
                        cut.getOrDefault(part.mark(), 0) == spliced.whole().count());
        cut.merge(spliced.whole().mark(), all ? spliced.whole().count() : 0, Integer::sum);
    }

    /** Every piece is cut just as often as it is needed, or said not to be had. */
    private void need(Need need) {
        boolean unmet = list.unmet().stream().anyMatch(each -> each.need().equals(need));
        int found = cut.getOrDefault(need.mark(), 0);
        if (found != (unmet ? 0 : need.count())) {
            faults.add(need.mark() + " is cut " + found + " times instead of " + need.count());
        }
    }

    private void onHand() {
        taken.forEach((piece, count) -> {
            int there = 0;
            for (RackPiece each : yard.rack()) {
                there += each.equals(piece) ? each.count() : 0;
            }
            if (count > there) {
                faults.add("the rack has " + there + " of a piece that is taken " + count + " times");
            }
        });
    }
}
