package pitchboard.sheet.buying;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;

/** Draws the papers for the yard and for the bench. */
public final class BuyingPapers {
    private static final String CAUTION =
            "Check every board before it is cut: splits, knots at cuts, crown. Wear eye and ear protection; support both "
                    + "sides of the cut. Sizes given go before sizes scaled off.";

    private BuyingPapers() {}

    /** The yard's list first, then the boards in the order they are picked. */
    public static List<Sheet> draw(Errand errand) {
        Frame frame = new Frame(
                errand.paper(), new TitleBlock(errand.title(), errand.rulebook(), errand.fingerprint(), CAUTION));
        List<Draft> drafts = new ArrayList<>(YardSheet.of(errand, frame));
        drafts.addAll(new BenchSheet(errand, frame).pages());
        return frame.bind(drafts);
    }
}
