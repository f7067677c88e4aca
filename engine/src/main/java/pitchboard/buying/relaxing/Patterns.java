package pitchboard.buying.relaxing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The patterns found so far, each once. */
public final class Patterns {
    private final List<Pattern> all = new ArrayList<>();
    private final Map<String, Integer> seen = new LinkedHashMap<>();

    public static Pattern of(int stock, int[] counts, int used) {
        int[] kinds = new int[used];
        int[] times = new int[used];
        int at = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            if (counts[kind] > 0) {
                kinds[at] = kind;
                times[at++] = counts[kind];
            }
        }
        return new Pattern(stock, kinds, times);
    }

    public int size() {
        return all.size();
    }

    public Pattern get(int index) {
        return all.get(index);
    }

    /** Its place, or -1. */
    public int indexOf(Pattern pattern) {
        return seen.getOrDefault(key(pattern), -1);
    }

    /** Whether it was new. */
    boolean add(Pattern pattern) {
        if (seen.putIfAbsent(key(pattern), all.size()) != null) {
            return false;
        }
        all.add(pattern);
        return true;
    }

    private static String key(Pattern pattern) {
        StringBuilder key = new StringBuilder();
        key.append((char) pattern.stock());
        for (int i = 0; i < pattern.kinds().length; i++) {
            key.append((char) pattern.kinds()[i]).append((char) pattern.counts()[i]);
        }
        return key.toString();
    }
}
