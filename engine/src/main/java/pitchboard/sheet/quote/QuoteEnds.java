package pitchboard.sheet.quote;

import java.util.List;
import pitchboard.costing.Costing;
import pitchboard.costing.Price;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** The head and the foot of what a customer signs. */
final class QuoteEnds {
    static final double SIGNATURES = 24;
    static final String UNSETTLED = "As drawn, the stair does not meet every rule or check of strength named on the"
            + " crew's sheets. It is not built before that is settled; what changes is agreed in writing.";

    private static final Lettering LARGE = Lettering.ofCapitals(5).bold();
    private static final Lettering NAME = Lettering.ofCapitals(3.4).bold();
    private static final double HEAD = 21;
    private static final double ROW = 4.2;

    private final Draft page;

    QuoteEnds(Draft page) {
        this.page = page;
    }

    /**
     * Who offers what to whom, until when, and for how much.
     *
     * @return how tall it is
     */
    double head(Offer offer, Price price) {
        head(offer.costing(), offer.title().client(), offer.title().place());
        Box room = page.room();
        text(room.right(), room.top() + LARGE.capHeight(), price.total().toString(), LARGE, Align.RIGHT);
        return HEAD;
    }

    /** The same without a price. */
    double head(Costing costing, String client, String place) {
        Box room = page.room();
        List<String> from = costing.rates().wording().from();
        double y = room.top() + NAME.capHeight();
        if (from.isEmpty()) {
            page.pencil().line(Pen.PENCIL, Spot.of(room.left(), y + 4), Spot.of(room.left() + 90, y + 4));
            text(room.left(), y + 8, "who makes the offer", Lettering.NOTE, Align.LEFT);
        } else {
            text(room.left(), y, from.get(0), NAME, Align.LEFT);
        }
        // Six lines at most: two columns of three under the name.
        for (int i = 1; i < from.size(); i++) {
            double x = room.left() + (i > 3 ? 52 : 0);
            text(x, y + ((i - 1) % 3 + 1) * ROW, from.get(i), Lettering.NOTE, Align.LEFT);
        }
        double middle = room.left() + 112;
        String whom = client.isEmpty() ? place : client;
        text(
                middle,
                y,
                whom.isEmpty() ? "" : "for " + whom,
                Lettering.ofCapitals(2.8).bold(),
                Align.LEFT);
        text(middle, y + ROW, client.isEmpty() ? "" : place, Lettering.NOTE, Align.LEFT);
        String until = costing.quotedOn().later(costing.rates().validDays()).words();
        text(
                room.right(),
                y + 2 * ROW,
                "offered on " + costing.quotedOn().words() + ", valid until **" + until + "**",
                Lettering.NOTE,
                Align.RIGHT);
        double rule = room.top() + HEAD - 3;
        page.pencil().line(Pen.HEAD_RULE, Spot.of(room.left(), rule), Spot.of(room.right(), rule));
        return HEAD;
    }

    private void text(double x, double y, String words, Lettering lettering, Align align) {
        page.pencil().text(Spot.of(x, y), words, lettering, align);
    }

    /** A line for each of the two who sign. */
    void signatures() {
        Box foot = page.room().bottomPart(SIGNATURES);
        double half = foot.width() / 2;
        line(foot.left(), half - 12, foot.bottom() - 6, "for the customer, with the date");
        line(foot.left() + half, half - 4, foot.bottom() - 6, "for the crew, with the date");
    }

    private void line(double left, double width, double y, String words) {
        page.pencil().line(Pen.PENCIL, Spot.of(left, y), Spot.of(left + width, y));
        text(left, y + 4, words, Lettering.NOTE, Align.LEFT);
    }
}
