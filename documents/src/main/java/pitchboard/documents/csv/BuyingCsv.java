package pitchboard.documents.csv;

import java.util.Optional;
import pitchboard.buying.order.Board;
import pitchboard.buying.order.Cut;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.order.Unmet;
import pitchboard.buying.order.YardLine;
import pitchboard.job.Purchase;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.money.Money;

/** The yard's list and the cuts. Lengths are plain decimal numbers, in the unit the head names. */
public final class BuyingCsv {
    private static final int PLACES = 4;

    private final Tape tape;

    private BuyingCsv(Purchase purchase) {
        tape = purchase.jobs().get(0).job().brief().tape();
    }

    /** A row for each length of each stock to be bought, and for each piece that cannot be. */
    public static String boards(Purchase purchase) {
        BuyingCsv lengths = new BuyingCsv(purchase);
        String currency = purchase.list().yard().currency().code();
        Csv csv = new Csv()
                .row(
                        "stock",
                        "species",
                        "grade",
                        "treatment",
                        "length " + lengths.unit(),
                        "boards",
                        "each " + currency,
                        "together " + currency,
                        "note");
        for (StockOrder order : purchase.list().orders()) {
            for (YardLine line : YardLine.of(order)) {
                csv.row(
                        order.stock().name(),
                        order.stock().wood().species(),
                        order.stock().wood().grade(),
                        order.stock().wood().treatment(),
                        lengths.number(line.sold().nominal()),
                        Integer.toString(line.count()),
                        money(line.each()),
                        money(line.together()),
                        line.each().isEmpty() ? "no price" : "");
            }
        }
        for (Unmet each : purchase.list().unmet()) {
            csv.row(
                    "",
                    "",
                    "",
                    "",
                    lengths.number(each.need().length()),
                    Integer.toString(each.need().count()),
                    "",
                    "",
                    each.need().mark() + " " + each.need().name() + " not to be had: " + each.because());
        }
        return csv.text();
    }

    private static String money(Optional<Money> money) {
        return money.map(Money::digits).orElse("");
    }

    /** A row for each cut, in the order of sawing, and one for what is left of each board. */
    public static String cuts(Purchase purchase) {
        BuyingCsv lengths = new BuyingCsv(purchase);
        String unit = lengths.unit();
        Csv csv = new Csv()
                .row("stock", "board", "from", "board length " + unit, "piece", "name", "start " + unit, "end " + unit);
        for (StockOrder order : purchase.list().orders()) {
            int number = 1;
            for (Board board : order.boards()) {
                lengths.cuts(csv, order.stock().name(), number, board);
                number++;
            }
        }
        return csv.text();
    }

    private void cuts(Csv csv, String stock, int number, Board board) {
        String from = board.isBought() ? "yard" : "rack";
        for (Cut cut : board.cuts()) {
            String mark = cut.pieces() == 1
                    ? cut.need().mark()
                    : cut.need().mark() + " + " + cut.need().mark();
            csv.row(
                    stock,
                    Integer.toString(number),
                    from,
                    number(board.length()),
                    mark,
                    cut.need().name(),
                    number(cut.from()),
                    number(cut.to()));
        }
        if (board.left().isPositive()) {
            csv.row(
                    stock,
                    Integer.toString(number),
                    from,
                    number(board.length()),
                    "",
                    board.isKept() ? "kept" : "scrap",
                    number(board.length().minus(board.left())),
                    number(board.length()));
        }
    }

    private String unit() {
        return tape.isInches() ? "in" : "mm";
    }

    private String number(Length length) {
        return Decimals.trimmed(tape.isInches() ? length.inInches() : length.inMm(), PLACES);
    }
}
