package pitchboard.sheet.buying;

import java.util.List;
import pitchboard.buying.order.Alike;
import pitchboard.buying.order.Board;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.order.Unmet;
import pitchboard.buying.order.YardLine;
import pitchboard.buying.yard.Stock;
import pitchboard.money.Money;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** What to pick at the yard, stock by stock, with boxes to tick; and what to take off the rack. */
final class YardSheet {
    private final Errand errand;
    private final Table table;

    private YardSheet(Errand errand) {
        this.errand = errand;
        table = Table.of(
                        Column.checkBox("", 12),
                        Column.right("boards", 20).bold(),
                        Column.left("length", 34).bold(),
                        Column.left("wood", 80),
                        Column.right("each", 30),
                        Column.right("together", 34),
                        Column.rest("look"))
                .lettered(Lettering.ofCapitals(2.6));
    }

    static List<Draft> of(Errand errand, Frame frame) {
        YardSheet sheet = new YardSheet(errand);
        BuyingList list = errand.list();
        list.orders().forEach(sheet::order);
        list.orders().forEach(sheet::rack);
        sheet.unmet(list.unmet());
        sheet.sum(list);
        return sheet.table.over(page -> frame.draft(page == 1 ? "yard" : "yard-" + page, "To buy at the yard"));
    }

    private void order(StockOrder order) {
        if (order.bought().isEmpty()) {
            return;
        }
        Stock stock = order.stock();
        table.heading(stock.name() + ", " + errand.size(stock.thickness()) + " × " + errand.size(stock.width())
                + " as it measures: " + cost(order));
        for (YardLine line : YardLine.of(order)) {
            table.row(
                    "",
                    String.valueOf(line.count()),
                    errand.size(line.sold().nominal()),
                    stock.wood().words(),
                    line.each().map(Money::digits).orElse("no price"),
                    line.together().map(Money::digits).orElse("no price"),
                    "straight, no split ends");
        }
    }

    private static String cost(StockOrder order) {
        if (order.cost().isEmpty()) {
            return "no price; planned for the fewest feet";
        }
        String cost = order.cost().get().toString();
        if (order.proof().cheapest()) {
            return cost + ", and nothing cheaper yields these pieces";
        }
        return cost + ", not proved; nothing costs less than "
                + order.leastCost().map(Money::digits).orElse("0");
    }

    private void rack(StockOrder order) {
        List<Alike> pieces = Alike.of(order).stream()
                .filter(alike -> !alike.board().isBought())
                .toList();
        if (pieces.isEmpty()) {
            return;
        }
        table.heading("From our own rack: " + order.stock().name());
        for (Alike piece : pieces) {
            Board.Origin.FromRack origin = (Board.Origin.FromRack) piece.board().origin();
            String count = String.valueOf(piece.count());
            String length = errand.size(piece.board().length());
            table.row("", count, length, origin.piece().note(), "", "", "measure it again");
        }
    }

    private void unmet(List<Unmet> unmet) {
        if (unmet.isEmpty()) {
            return;
        }
        table.heading("Not to be had from this list");
        for (Unmet each : unmet) {
            table.row(
                    "",
                    String.valueOf(each.need().count()),
                    each.need().mark() + "  " + errand.size(each.need().length()),
                    each.need().name() + ": " + each.because(),
                    "",
                    "no price",
                    each.advice());
        }
    }

    private void sum(BuyingList list) {
        String whole = list.isComplete() ? "All boards together: " : "NOT COMPLETE. What has a price: ";
        String by = list.yard().givenBy().isEmpty() ? "" : " by " + list.yard().givenBy();
        table.heading(whole + list.costSoFar() + ", without tax and delivery; prices of "
                + list.yard().name() + ", given " + list.yard().date() + by);
    }
}
