package pitchboard.documents.text;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.order.Alike;
import pitchboard.buying.order.Board;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.order.Cut;
import pitchboard.buying.order.Spliced;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.order.Unmet;
import pitchboard.buying.order.YardLine;
import pitchboard.job.Purchase;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/** What to buy and how to cut it, for a terminal. */
public final class BuyingText {
    private final Purchase purchase;
    private final Tape tape;
    private final Lines out = new Lines();

    private BuyingText(Purchase purchase) {
        this.purchase = purchase;
        tape = purchase.jobs().get(0).job().brief().tape();
    }

    public static String write(Purchase purchase) {
        BuyingText text = new BuyingText(purchase);
        text.heading();
        purchase.list().orders().forEach(text::order);
        text.unmet();
        text.sum();
        return text.out.text();
    }

    private void heading() {
        BuyingList list = purchase.list();
        out.heading("To buy at " + list.yard().name() + "  (inputs "
                + purchase.fingerprint().text() + ")");
        char letter = 'A';
        for (var job : purchase.jobs()) {
            String mark = purchase.jobs().size() == 1 ? "" : letter++ + "  ";
            out.item("  ", mark + job.job().brief().title().job());
        }
    }

    private void order(StockOrder order) {
        String wood = order.stock().wood().words();
        out.heading(order.stock().name() + (wood.isEmpty() ? "" : ", " + wood));
        for (YardLine line : YardLine.of(order)) {
            String price = line.each()
                    .map(each -> " at " + each.digits() + " = "
                            + line.together().orElseThrow().digits())
                    .orElse(", no price");
            out.item("  buy  ", line.count() + " of " + size(line.sold().nominal()) + price);
        }
        out.item("  ", verdict(order));
        for (Spliced spliced : order.spliced()) {
            List<String> joints = spliced.joints().stream().map(this::size).toList();
            out.item(
                    "  join ",
                    spliced.whole().mark() + " of " + spliced.parts().size()
                            + " parts, no board being long enough: joint " + String.join(" and ", joints)
                            + " from its end, over a support (common practice, no source)");
        }
        for (Alike alike : Alike.of(order)) {
            out.item("  cut  ", boards(alike) + ": " + cuts(alike.board()));
        }
    }

    private String verdict(StockOrder order) {
        if (order.cost().isEmpty()) {
            return "no price in the list; planned for the fewest feet";
        }
        String cost = order.cost().get().toString();
        if (!order.proof().cheapest()) {
            return cost + "; not proved to be the cheapest, which is at least "
                    + order.leastCost().orElseThrow();
        }
        return cost + "; proved: nothing cheaper" + (order.proof().fewest() ? ", nor as cheap with fewer boards" : "");
    }

    private String boards(Alike alike) {
        String count = alike.count() == 1 ? "" : alike.count() + " boards of ";
        return count
                + size(name(alike.board()))
                + (alike.board().isBought() ? "" : " from the rack")
                + (alike.board().bad().isPositive() ? ", bad end away from the hook" : "");
    }

    private static Length name(Board board) {
        return board.origin() instanceof Board.Origin.FromYard yard
                ? yard.sold().nominal()
                : board.length();
    }

    private String cuts(Board board) {
        List<String> words = new ArrayList<>();
        for (Cut cut : board.cuts()) {
            String mark = cut.pieces() == 1
                    ? cut.need().mark()
                    : "two " + cut.need().mark() + ", "
                            + cut.need().nested().orElseThrow().meeting().words() + " side by side,";
            words.add(mark + " to " + TapeWriter.writeRunning(cut.to(), tape, Tape.Style.PLAIN));
        }
        if (board.left().isPositive()) {
            Length left = board.left().roundedDown(tape.graduation());
            words.add((board.isKept() ? "keep " : "scrap ") + size(left));
        }
        return String.join(", ", words);
    }

    private void unmet() {
        if (!purchase.list().unmet().isEmpty()) {
            out.heading("Not to be had from this list");
        }
        for (Unmet each : purchase.list().unmet()) {
            out.item(
                    "  " + each.need().mark() + "  ",
                    each.need().count() + " " + each.need().name() + ": " + each.because() + "; " + each.advice());
        }
    }

    private void sum() {
        BuyingList list = purchase.list();
        String whole = list.isComplete() ? "All boards" : "NOT COMPLETE; what has a price";
        out.heading(
                whole + ": " + list.costSoFar() + ", prices of " + list.yard().date() + ", without tax and delivery");
    }

    private String size(Length length) {
        return TapeWriter.write(length, tape, Tape.Style.PLAIN);
    }
}
