package pitchboard.documents.csv;

import pitchboard.costing.CostLine;
import pitchboard.costing.Costing;
import pitchboard.costing.Price;
import pitchboard.job.Quotation;
import pitchboard.money.Money;

/** Every line of cost, and the way to the price. */
public final class CostCsv {
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
