package pitchboard.store;

import java.util.ArrayList;
import java.util.List;

/** Puts lines {@code hours:} into the text of a file of rates in the place of its own, or after the line of the hour. */
final class HoursInPlace {
    private static final String OWN = "hours:";
    private static final String BEFORE = "hour:";

    private HoursInPlace() {}

    /** @param lines from {@code hours:} on, each ended */
    static String of(String text, String lines) {
        List<String> before = List.of(text.split("\n", -1));
        List<String> after = new ArrayList<>();
        boolean inside = false;
        boolean put = false;
        for (String line : before) {
            inside = line.startsWith(OWN) || (inside && isBelow(line));
            if (!inside) {
                after.add(line);
            }
            if (!put && (line.startsWith(OWN) || (line.startsWith(BEFORE) && hasNone(before)))) {
                after.addAll(List.of(lines.stripTrailing().split("\n", -1)));
                put = true;
            }
        }
        return String.join("\n", after);
    }

    /** What belongs to a line at the left edge: deeper lines, and dashes of its list. */
    private static boolean isBelow(String line) {
        return line.startsWith(" ") || line.startsWith("-");
    }

    private static boolean hasNone(List<String> lines) {
        return lines.stream().noneMatch(line -> line.startsWith(OWN));
    }
}
