package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;
import pitchboard.sheet.rails.EdgeSheet;
import pitchboard.sheet.rails.HandrailSheet;
import pitchboard.sheet.rails.InfillSheet;
import pitchboard.sheet.rails.PostSheet;
import pitchboard.sheet.rails.RailSheet;
import pitchboard.sheet.strength.ElementsSheet;
import pitchboard.sheet.strength.StrengthSheets;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.work.CautionSheet;
import pitchboard.sheet.work.OrderSheet;

/** Draws the set, in the order a crew turns the pages. */
public final class Draughtsman {
    private static final String CAUTION =
            "The local code as adopted decides. Where the work can hurt someone, ask a licensed professional. "
                    + "Sizes given go before sizes scaled off.";

    private final Subject subject;
    private final Frame frame;
    private final Predicate<String> wanted;

    private Draughtsman(Subject subject, Predicate<String> wanted) {
        this.subject = subject;
        this.frame = new Frame(
                subject.stair().brief().paper(),
                new TitleBlock(
                        subject.stair().brief().title(),
                        subject.rulebook().edition().shortName(),
                        subject.fingerprint(),
                        CAUTION),
                wanted);
        this.wanted = wanted;
    }

    /** The whole set. */
    public static List<Sheet> draw(Subject subject) {
        return draw(subject, id -> true);
    }

    /** Those sheets of the set whose id is wanted, numbered as in the whole set. */
    public static List<Sheet> draw(Subject subject, Predicate<String> wanted) {
        return new Draughtsman(subject, wanted).draw();
    }

    private List<Sheet> draw() {
        List<Draft> drafts = new ArrayList<>();
        drafts.addAll(onePage("elevation", ElevationSheet::of));
        drafts.addAll(onePage("plan", PlanSheet::of));
        drafts.addAll(onePage("stringer", StringerSheet::of));
        drafts.addAll(onePage("ends", EndSheets::inPlace));
        drafts.addAll(onePage("treads", TreadSheet::of));
        drafts.addAll(RailSheet.of(subject, frame));
        drafts.addAll(PostSheet.of(subject, frame));
        drafts.addAll(InfillSheet.of(subject, frame));
        drafts.addAll(EdgeSheet.of(subject, frame));
        drafts.addAll(HandrailSheet.of(subject, frame));
        // How many pages the others take only shows when they are laid out, and every sheet says "of" how many it is.
        drafts.addAll(PartsSheet.of(subject, frame));
        drafts.addAll(OrderSheet.of(subject, frame));
        drafts.addAll(PitchBoardSheet.of(subject, frame));
        drafts.addAll(EndSheets.patterns(subject, frame));
        drafts.addAll(RulesSheet.of(subject, frame));
        drafts.addAll(StrengthSheets.of(subject.stair(), subject.carried(), frame));
        drafts.addAll(
                onePage(ElementsSheet.ID, (all, around) -> ElementsSheet.of(all.stair(), all.rulebook(), around)));
        drafts.addAll(WorkingsSheet.of(subject, frame));
        drafts.addAll(CautionSheet.of(subject, frame));
        return frame.bind(drafts);
    }

    /** A blank page keeps the place of one that nobody wants. */
    private List<Draft> onePage(String id, BiFunction<Subject, Frame, List<Draft>> hand) {
        return wanted.test(id) ? hand.apply(subject, frame) : List.of(frame.draft(id, ""));
    }
}
