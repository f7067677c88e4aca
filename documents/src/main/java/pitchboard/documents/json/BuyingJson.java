package pitchboard.documents.json;

import java.util.Optional;
import pitchboard.buying.order.Board;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.order.Cut;
import pitchboard.buying.order.Spliced;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.order.Unmet;
import pitchboard.buying.order.YardLine;
import pitchboard.job.Purchase;
import pitchboard.money.Money;

/** What to buy and how to cut it. Amounts are text, so that no program makes doubles of them unasked. */
public final class BuyingJson {
    private final QuantityJson quantity;

    private BuyingJson(QuantityJson quantity) {
        this.quantity = quantity;
    }

    public static String write(Purchase purchase) {
        return of(purchase).text();
    }

    public static Json of(Purchase purchase) {
        BuyingJson json = new BuyingJson(
                new QuantityJson(purchase.jobs().get(0).job().brief().tape()));
        return json.purchase(purchase);
    }

    private Json purchase(Purchase purchase) {
        BuyingList list = purchase.list();
        return Json.object()
                .says("inputs", purchase.fingerprint().text())
                .with(
                        "jobs",
                        Json.list(
                                purchase.jobs(),
                                job -> Json.words(job.job().brief().title().job())))
                .says("yard", list.yard().name())
                .says("pricesOf", list.yard().date().toString())
                .says("currency", list.yard().currency().code())
                .with("complete", Json.truth(list.isComplete()))
                .with("proved", Json.truth(list.isProved()))
                .says("cost", list.costSoFar().digits())
                .with("orders", Json.list(list.orders(), this::order))
                .with("unmet", Json.list(list.unmet(), this::unmet));
    }

    private Json order(StockOrder order) {
        return Json.object()
                .says("stock", order.stock().name())
                .with("cost", money(order.cost()))
                .with("costsAtLeast", money(order.leastCost()))
                .with("cheapest", Json.truth(order.proof().cheapest()))
                .with("fewestBoards", Json.truth(order.proof().fewest()))
                .with("longestLeft", Json.truth(order.proof().longest()))
                .with("buy", Json.list(YardLine.of(order), this::line))
                .with("spliced", Json.list(order.spliced(), this::spliced))
                .with("boards", Json.list(order.boards(), this::board));
    }

    private Json spliced(Spliced spliced) {
        return Json.object()
                .says("piece", spliced.whole().mark())
                .with("joints", Json.list(spliced.joints(), quantity::of))
                .with("parts", Json.list(spliced.parts(), part -> Json.words(part.mark())));
    }

    private Json line(YardLine line) {
        return Json.object()
                .with("length", quantity.of(line.sold().nominal()))
                .with("boards", Json.number(line.count()))
                .with("each", money(line.each()))
                .with("together", money(line.together()));
    }

    private static Json money(Optional<Money> money) {
        return money.map(Money::digits).map(Json::words).orElseGet(Json::none);
    }

    private Json board(Board board) {
        return Json.object()
                .says("from", board.isBought() ? "yard" : "rack")
                .with("length", quantity.of(board.length()))
                .with("trim", quantity.of(board.trim()))
                .with("badEnd", quantity.of(board.bad()))
                .with("cuts", Json.list(board.cuts(), this::cut))
                .with("left", quantity.of(board.left()))
                .with("kept", Json.truth(board.isKept()));
    }

    private Json cut(Cut cut) {
        return Json.object()
                .says("piece", cut.need().mark())
                .with("pieces", Json.number(cut.pieces()))
                .with("start", quantity.of(cut.from()))
                .with("end", quantity.of(cut.to()));
    }

    private Json unmet(Unmet each) {
        return Json.object()
                .says("piece", each.need().mark())
                .with("count", Json.number(each.need().count()))
                .with("length", quantity.of(each.need().length()))
                .says("because", each.because())
                .says("advice", each.advice());
    }
}
