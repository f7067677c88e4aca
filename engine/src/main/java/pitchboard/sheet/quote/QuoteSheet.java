package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import pitchboard.costing.Costing;
import pitchboard.costing.Estimator;
import pitchboard.costing.Extra;
import pitchboard.costing.Payment;
import pitchboard.costing.Price;
import pitchboard.costing.Scope;
import pitchboard.measure.Tape;
import pitchboard.money.Money;
import pitchboard.sheet.Box;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** What the customer signs: scope, drawing, price, payments, terms, what is not in it, how long it holds. */
final class QuoteSheet {
    private static final double DRAWING = 104;
    private static final double GAP = 8;
    private static final Lettering LETTERS = Lettering.ofCapitals(2.4);

    private final Offer offer;
    private final Costing costing;
    private final Price price;
    private final Frame frame;
    private final Table table = Table.of(
                    Column.left("", 31).bold(),
                    Column.rest(""),
                    Column.right("", 30).bold())
            .lettered(LETTERS);

    private QuoteSheet(Offer offer, Price price, Frame frame) {
        this.offer = offer;
        this.costing = offer.costing();
        this.price = price;
        this.frame = frame;
    }

    static List<Draft> of(Offer offer, Price price, Frame frame) {
        QuoteSheet sheet = new QuoteSheet(offer, price, frame);
        sheet.rows();
        return sheet.pages();
    }

    /** Words on the left, a stair on the right, until neither is left; the signatures stand on the last page. */
    private List<Draft> pages() {
        List<Draft> pages = new ArrayList<>();
        int next = 0;
        while (next < table.rowCount() || pages.size() < offer.stairs().size()) {
            Draft page = frame.draft("quote", pages.size() + 1, "Quote");
            Box room = page.room().withoutBottom(QuoteEnds.SIGNATURES);
            if (pages.isEmpty()) {
                room = room.withoutTop(new QuoteEnds(page).head(offer, price));
            }
            boolean drawn = pages.size() < offer.stairs().size();
            if (drawn) {
                Estimator.Built built = offer.stairs().get(pages.size());
                StairDrawing.draw(page, built.stair(), room.rightPart(DRAWING));
            }
            Box words = drawn ? room.withoutRight(DRAWING + GAP) : room;
            next = next < table.rowCount() ? table.draw(page, words, next).next() : next;
            pages.add(page);
        }
        new QuoteEnds(pages.get(pages.size() - 1)).signatures();
        return pages;
    }

    private void rows() {
        for (Estimator.Built built : offer.stairs()) {
            table.heading("What we build: " + built.stair().brief().title().job());
            Scope.of(built.stair(), built.parts(), Tape.Style.PRINTED)
                    .forEach(item -> table.row(item.topic(), item.words(), ""));
        }
        costing.rates().pad().ifPresent(pad -> table.row("pad", "of concrete, dug and poured", ""));
        under("with it", costing.rates().extras().stream().map(Extra::what).toList());
        table.heading("Price in " + costing.rates().currency().code());
        price();
        table.heading("What holds between us");
        under("terms", costing.rates().wording().terms());
        under("not in the price", exclusions());
        if (!offer.cautions().isEmpty()) {
            table.row("before it is built", QuoteEnds.UNSETTLED, "");
        }
    }

    private void price() {
        Money taxes = price.taxTotal();
        String words = "materials and labour" + (taxes.isZero() ? "" : ", " + taxes.digits() + " of taxes in it");
        table.row("the whole work", words, price.total().digits());
        String topic = "of it due";
        for (Payment payment : price.payments()) {
            table.row(topic, payment.when(), payment.amount().digits());
            topic = "";
        }
    }

    private List<String> exclusions() {
        List<String> all = new ArrayList<>(costing.rates().wording().exclusions());
        offer.stairs().forEach(built -> all.addAll(Scope.notPriced(built.stair(), built.parts())));
        return all;
    }

    /** The topic stands beside the first of them alone. */
    private void under(String topic, List<String> sentences) {
        String beside = topic;
        for (String sentence : sentences) {
            table.row(beside, sentence, "");
            beside = "";
        }
    }
}
