package pitchboard.documents.text;

import java.util.List;
import pitchboard.costing.CostLine;
import pitchboard.costing.Costing;
import pitchboard.costing.LineKind;
import pitchboard.costing.Payment;
import pitchboard.costing.Price;
import pitchboard.job.Quotation;
import pitchboard.money.Money;

/** Cost and price, for a terminal. */
public final class CostText {
    private static final int AMOUNT = 10;
    private static final int NAME = 20;

    private final Lines out = new Lines();

    private CostText() {}

    public static String write(Quotation quotation) {
        CostText text = new CostText();
        Costing costing = quotation.costing();
        text.out.heading("Cost of "
                + quotation.purchase().jobs().get(0).job().brief().title().job() + " on " + costing.quotedOn()
                + "  (inputs " + quotation.fingerprint().text() + ")");
        quotation.cautions().forEach(words -> text.out.item("  LOOK FIRST  ", words));
        costing.missing().forEach(words -> text.out.item("  NO PRICE  ", words));
        costing.stale().forEach(words -> text.out.item("  OLD PRICES  ", words));
        for (LineKind kind : LineKind.values()) {
            text.lines(kind, costing);
        }
        text.out.heading("Price in " + costing.rates().currency().code());
        costing.price().ifPresentOrElse(text::price, () -> text.out.item("  ", "none while a price is missing"));
        return text.out.text();
    }

    private void lines(LineKind kind, Costing costing) {
        List<CostLine> lines =
                costing.lines().stream().filter(line -> line.kind() == kind).toList();
        if (lines.isEmpty()) {
            return;
        }
        out.heading(kind.words());
        for (CostLine line : lines) {
            amount(line.what(), line.cost().map(Money::digits).orElse("no price"), line.working());
        }
    }

    private void amount(String name, String amount, String words) {
        String first = "  " + Lines.padded(name, NAME) + " " + Lines.right(amount, AMOUNT);
        out.item(words.isEmpty() ? first : first + "  ", words);
    }

    private void price(Price price) {
        amount("cost", price.direct().digits(), "");
        amount("overhead", price.overhead().digits(), "");
        amount("profit", price.profit().digits(), "");
        for (Price.Tax tax : price.taxes()) {
            amount(
                    "tax on " + tax.kind().words(),
                    tax.amount().digits(),
                    "on " + tax.on().digits());
        }
        amount("rounding", price.rounding().digits(), "");
        amount("price", price.total().digits(), "");
        for (Payment payment : price.payments()) {
            amount("  due", payment.amount().digits(), payment.when());
        }
    }
}
