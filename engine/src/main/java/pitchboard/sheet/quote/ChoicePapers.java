package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Title;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;

/** Draws the papers of several ways side by side, apart, so that one can be handed out and the other kept. */
public final class ChoicePapers {
    private ChoicePapers() {}

    /** For the crew: how each way stands, what it costs and every figure of it. */
    public static List<Sheet> crew(Choice choice) {
        Frame frame = frame(choice);
        List<Draft> drafts = new ArrayList<>(ChoiceCostSheet.of(choice, frame));
        int number = 1;
        for (Choice.Way way : choice.ways()) {
            String id = "cost-" + (char) ('a' - 1 + number);
            way.offer().ifPresent(offer -> drafts.addAll(CostSheet.of(offer, frame, id, "Cost: " + way.name())));
            number++;
        }
        return frame.bind(drafts);
    }

    /** For the customer: those that can be offered; empty when none can. */
    public static List<Sheet> customer(Choice choice) {
        if (choice.offered().isEmpty()) {
            return List.of();
        }
        Frame frame = frame(choice);
        return frame.bind(ChoiceSheet.of(choice, frame));
    }

    private static Frame frame(Choice choice) {
        Title job = choice.title();
        String date =
                choice.findCosting().map(costing -> costing.quotedOn().words()).orElse(job.date());
        Title title = new Title(job.job(), job.client(), job.place(), date);
        return QuotePapers.frame(title, choice.paper(), choice.rulebook(), choice.fingerprint());
    }
}
