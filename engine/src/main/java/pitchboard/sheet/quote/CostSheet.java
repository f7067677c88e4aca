package pitchboard.sheet.quote;

import java.util.List;
import pitchboard.costing.CostLine;
import pitchboard.costing.Costing;
import pitchboard.costing.LineKind;
import pitchboard.costing.Price;
import pitchboard.costing.Takeoff;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** Everything: each line with its working, the rules of counting, and the way from cost to price. */
final class CostSheet {
    private static final int PLACES = 2;

    private final Costing costing;
    private final Table table = Table.of(
                    Column.left("", 54),
                    Column.rest("how it was come by"),
                    Column.right("cost", 34).bold())
            .lettered(Lettering.ofCapitals(2.4));

    private CostSheet(Costing costing) {
        this.costing = costing;
    }

    static List<Draft> of(Offer offer, Frame frame, String id, String title) {
        CostSheet sheet = new CostSheet(offer.costing());
        offer.cautions().forEach(words -> sheet.table.row("LOOK FIRST", words, ""));
        sheet.warnings();
        for (LineKind kind : LineKind.values()) {
            sheet.lines(kind);
        }
        sheet.price();
        sheet.rules();
        return sheet.table.over(page -> frame.draft(id, page, title));
    }

    private void warnings() {
        costing.missing().forEach(words -> table.row("NO PRICE", words, "not complete"));
        costing.stale().forEach(words -> table.row("OLD PRICES", words, ""));
    }

    private void lines(LineKind kind) {
        List<CostLine> lines =
                costing.lines().stream().filter(line -> line.kind() == kind).toList();
        if (lines.isEmpty()) {
            return;
        }
        table.heading(kind.words());
        for (CostLine line : lines) {
            table.row(
                    line.what(), line.working(), line.cost().map(Money::digits).orElse("no price"));
        }
    }

    private void price() {
        table.heading("from cost to price, in " + costing.rates().currency().code());
        costing.price().ifPresentOrElse(this::price, () -> table.row("price", "not while a price is missing", "none"));
    }

    private void price(Price price) {
        table.row("cost", "all lines above", price.direct().digits());
        table.row(
                "overhead",
                percent(costing.rates().overhead()) + " of it",
                price.overhead().digits());
        table.row(
                "profit",
                percent(costing.rates().profit()) + " of cost and overhead",
                price.profit().digits());
        for (Price.Tax tax : price.taxes()) {
            table.row(
                    "tax on " + tax.kind().words(),
                    percent(costing.rates().taxOf(tax.kind())) + " of "
                            + tax.on().digits() + ", its cost with overhead and profit",
                    tax.amount().digits());
        }
        table.row(
                "rounding",
                "up to a multiple of " + costing.rates().roundTo().digits(),
                price.rounding().digits());
        table.row("price", "", price.total().digits());
    }

    private void rules() {
        table.heading("how the sundries were counted");
        for (Takeoff takeoff : costing.takeoffs()) {
            table.row(
                    takeoff.kind().words(),
                    takeoff.rule(),
                    Decimals.trimmed(takeoff.amount(), PLACES) + " "
                            + takeoff.kind().unit());
        }
    }

    private static String percent(Ratio share) {
        return Decimals.trimmed(share.times(100), PLACES) + " %";
    }
}
