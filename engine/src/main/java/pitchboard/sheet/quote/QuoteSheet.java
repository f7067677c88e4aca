package pitchboard.sheet.quote;

import java.util.List;
import pitchboard.costing.Costing;
import pitchboard.costing.Payment;
import pitchboard.costing.Price;
import pitchboard.money.Money;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** What the customer signs: scope, price, payments, terms, what is not in it, how long it holds. */
final class QuoteSheet {
    private static final double SIGNATURES = 26;
    private static final Lettering LETTERS = Lettering.ofCapitals(2.8);

    private final Offer offer;
    private final Costing costing;
    private final Price price;
    private final Table table = Table.of(
                    Column.left("", 52).bold(),
                    Column.rest(""),
                    Column.right("", 46).bold())
            .lettered(LETTERS);

    private QuoteSheet(Offer offer, Price price) {
        this.offer = offer;
        this.costing = offer.costing();
        this.price = price;
    }

    static List<Draft> of(Offer offer, Price price, Frame frame) {
        QuoteSheet sheet = new QuoteSheet(offer, price);
        sheet.rows();
        List<Draft> pages = sheet.table.over(page -> frame.draft(page == 1 ? "quote" : "quote-" + page, "Quote"));
        sheet.signatures(pages.get(pages.size() - 1));
        return pages;
    }

    private void rows() {
        table.heading("What we build");
        offer.scope().forEach(line -> table.row("", line, ""));
        table.heading("Price in " + costing.rates().currency().code());
        table.row("the whole work", "materials, labour and taxes", price.total().digits());
        Money taxes = Money.none(costing.rates().currency());
        for (Price.Tax tax : price.taxes()) {
            taxes = taxes.plus(tax.amount());
        }
        table.row("", "of it taxes", taxes.digits());
        table.heading("Payments");
        for (Payment payment : price.payments()) {
            table.row("", payment.when(), payment.amount().digits());
        }
        sentences("Terms", costing.rates().terms());
        sentences("Not in this price", costing.rates().exclusions());
        table.heading("This offer holds until "
                + costing.quotedOn().later(costing.rates().validDays()) + ". Made on " + costing.quotedOn() + ".");
    }

    private void sentences(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            table.heading(heading);
            sentences.forEach(sentence -> table.row("", sentence, ""));
        }
    }

    private void signatures(Draft page) {
        Box foot = page.room().bottomPart(SIGNATURES);
        double half = foot.width() / 2;
        line(page, foot.left(), half - 12, foot.bottom() - 6, "for the customer, with the date");
        line(page, foot.left() + half, half - 4, foot.bottom() - 6, "for the crew, with the date");
    }

    private static void line(Draft page, double left, double width, double y, String words) {
        page.pencil().line(Pen.PENCIL, Spot.of(left, y), Spot.of(left + width, y));
        page.pencil().text(Spot.of(left, y + 4), words, Lettering.NOTE, Align.LEFT);
    }
}
