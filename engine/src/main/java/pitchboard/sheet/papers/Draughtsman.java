package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;

/** Draws the whole set, in the order a crew turns the pages. */
public final class Draughtsman {
    private static final String CAUTION =
            "The local code as adopted decides. Where the work can hurt someone, ask a licensed professional. "
                    + "Sizes given go before sizes scaled off.";

    private Draughtsman() {}

    public static List<Sheet> draw(Subject subject) {
        Frame frame = new Frame(
                subject.stair().brief().paper(),
                new TitleBlock(
                        subject.stair().brief().title(),
                        subject.rulebook().edition().shortName(),
                        subject.fingerprint(),
                        CAUTION));
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(ElevationSheet.of(subject, frame));
        drafts.addAll(PlanSheet.of(subject, frame));
        drafts.addAll(StringerSheet.of(subject, frame));
        drafts.addAll(EndSheets.inPlace(subject, frame));
        drafts.addAll(TreadSheet.of(subject, frame));
        drafts.addAll(PartsSheet.of(subject, frame));
        drafts.addAll(OrderSheet.of(subject, frame));
        drafts.addAll(PitchBoardSheet.of(subject, frame));
        drafts.addAll(EndSheets.patterns(subject, frame));
        drafts.addAll(RulesSheet.of(subject, frame));
        drafts.addAll(WorkingsSheet.of(subject, frame));
        drafts.addAll(CautionSheet.of(subject, frame));
        return frame.bind(drafts);
    }
}
