package pitchboard.documents.text;

import pitchboard.afterwards.Afterwards;
import pitchboard.costing.Rates;
import pitchboard.costing.Task;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;

/** The lines {@code hours:} of a file of rates, to be put in the place of those that are there. */
public final class HoursLines {
    private HoursLines() {}

    /** All of the crew's own figures: those of before, and in their place or beside them those that were right now. */
    public static String write(Afterwards after) {
        Rates better = after.betterRates();
        StringBuilder lines = new StringBuilder("hours:\n");
        for (Task task : Task.values()) {
            if (!better.isFromMemory(task)) {
                lines.append("  - { task: ")
                        .append(task.words())
                        .append(", hours: ")
                        .append(Decimals.trimmed(better.hoursOf(task), 4))
                        .append(" }")
                        .append(comment(after, task))
                        .append('\n');
            }
        }
        return lines.toString();
    }

    private static String comment(Afterwards after, Task task) {
        return after.tasks().stream()
                .filter(line -> line.task() == task && line.rightEach().isPresent())
                .map(line -> "   # " + text(line.taken().orElseThrow()) + " h for " + text(line.done()) + ", planned "
                        + text(line.plannedEach()) + (line.fromMemory() ? " from memory" : ""))
                .findFirst()
                .orElse("");
    }

    private static String text(Ratio number) {
        return Decimals.trimmed(number, 3);
    }
}
