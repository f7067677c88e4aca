package pitchboard.intake.offers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;

/** Some lines of a job laid over a whole one. */
public final class Overlay {
    /** Instead of a value: the line is taken away. */
    public static final String LEFT_OUT = "left out";

    private Overlay() {}

    /**
     * The job with these lines before its own: groups are gone into line by line, all else is replaced. Only what comes
     * from the changes knows its place, so that what is wrong with it is looked for there.
     */
    public static Written over(Written job, Written.Group changes) {
        return laid(job.anywhere(), changes);
    }

    private static Written laid(Written below, Written above) {
        if (!(below instanceof Written.Group under) || !(above instanceof Written.Group over)) {
            return above;
        }
        List<Written.Entry> entries = new ArrayList<>();
        for (Written.Entry entry : under.entries()) {
            Optional<Written.Entry> change = over.findEntry(entry.key());
            if (change.isEmpty()) {
                entries.add(entry);
            } else if (!isLeftOut(change.get())) {
                entries.add(new Written.Entry(
                        change.get().at(),
                        entry.key(),
                        laid(entry.value(), change.get().value())));
            }
        }
        over.entries().stream()
                .filter(entry -> under.findEntry(entry.key()).isEmpty() && !isLeftOut(entry))
                .forEach(entries::add);
        return new Written.Group(Spot.NOWHERE, entries);
    }

    private static boolean isLeftOut(Written.Entry entry) {
        return entry.value() instanceof Written.Text text && text.value().equals(LEFT_OUT);
    }
}
