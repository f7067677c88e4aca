package pitchboard.sheet.quote;

import java.util.List;
import pitchboard.afterwards.Afterwards;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;

/** Draws the two papers, apart, so that one can be handed out and the other kept. */
public final class QuotePapers {
    private static final String CAUTION =
            "The local code as adopted decides. Where the work can hurt someone, a licensed professional is asked.";

    private QuotePapers() {}

    /** For the crew: every figure. */
    public static List<Sheet> cost(Offer offer) {
        Frame frame = frame(offer);
        return frame.bind(CostSheet.of(offer, frame, "cost", "Cost, for the crew alone"));
    }

    /** For the customer; empty while a price is missing. */
    public static List<Sheet> quote(Offer offer) {
        Frame frame = frame(offer);
        return offer.costing()
                .price()
                .map(price -> frame.bind(QuoteSheet.of(offer, price, frame)))
                .orElse(List.of());
    }

    /** For the crew, when the job is done. */
    public static List<Sheet> afterwards(Offer offer, Afterwards after) {
        Frame frame = frame(offer);
        return frame.bind(AfterwardsSheet.of(after, frame));
    }

    private static Frame frame(Offer offer) {
        Title job = offer.title();
        Title title = new Title(
                job.job(), job.client(), job.place(), offer.costing().quotedOn().words());
        return frame(title, offer.paper(), offer.rulebook(), offer.fingerprint());
    }

    static Frame frame(Title title, Paper paper, String rulebook, String fingerprint) {
        return new Frame(paper, new TitleBlock(title, rulebook, fingerprint, CAUTION));
    }
}
