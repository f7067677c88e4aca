package pitchboard.documents.csv;

import pitchboard.costing.CostLine;
import pitchboard.costing.Costing;
import pitchboard.costing.Pack;
import pitchboard.costing.PackOrder;
import pitchboard.costing.Price;
import pitchboard.job.Quotation;
import pitchboard.measure.Decimals;
import pitchboard.money.Money;

/** Every line of cost, and the way to the price. */
public final class CostCsv {
    private static final int PLACES = 2;

    private CostCsv() {}

    public static String write(Quotation quotation) {
        Costing costing = quotation.costing();
        Csv csv = new Csv()
                .row(
                        "kind",
                        "what",
                        "how it was come by",
                        "cost " + costing.rates().currency().code());
        for (CostLine line : costing.lines()) {
            csv.row(
                    line.kind().words(),
                    line.what(),
                    line.working(),
                    line.cost().map(Money::digits).orElse(""));
        }
        costing.price().ifPresent(price -> price(csv, price));
        return csv.text();
    }

    /** What is bought of sundries: a row for each. */
    public static String sundries(Quotation quotation) {
        String code = quotation.costing().rates().currency().code();
        Csv csv = new Csv()
                .row("what", "needed", "unit", "with waste", "pack", "packs", "each " + code, "together " + code);
        for (PackOrder order : quotation.costing().packs()) {
            csv.row(
                    order.kind().words(),
                    Decimals.trimmed(order.amount(), PLACES),
                    order.kind().unit(),
                    Decimals.trimmed(order.withWaste(), PLACES),
                    order.pack().map(Pack::name).orElse(""),
                    order.pack().isPresent() ? Long.toString(order.packs()) : "",
                    order.pack().map(pack -> pack.price().digits()).orElse("no price"),
                    order.cost().map(Money::digits).orElse(""));
        }
        return csv.text();
    }

    private static void price(Csv csv, Price price) {
        csv.row("price", "overhead", "", price.overhead().digits());
        csv.row("price", "profit", "", price.profit().digits());
        for (Price.Tax tax : price.taxes()) {
            csv.row("price", "tax on " + tax.kind().words(), "", tax.amount().digits());
        }
        csv.row("price", "rounding", "", price.rounding().digits());
        csv.row("price", "total", "", price.total().digits());
    }
}
