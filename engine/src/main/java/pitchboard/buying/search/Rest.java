package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.relaxing.Pattern;
import pitchboard.buying.relaxing.Patterns;

/** A plan begun: the pieces still to cut, the boards still to cut them from, and the patterns taken so far. */
final class Rest {
    final int[] left;
    final int[] boards;
    private final List<Pattern> taken;

    Rest(int[] left, int[] boards) {
        this(left.clone(), boards.clone(), new ArrayList<>());
    }

    private Rest(int[] left, int[] boards, List<Pattern> taken) {
        this.left = left;
        this.boards = boards;
        this.taken = taken;
    }

    Rest copy() {
        return new Rest(left.clone(), boards.clone(), new ArrayList<>(taken));
    }

    List<Pattern> taken() {
        return taken;
    }

    boolean isDone() {
        for (int each : left) {
            if (each > 0) {
                return false;
            }
        }
        return true;
    }

    /** The longest kind still missing; only while not done. */
    int longest() {
        int kind = 0;
        while (left[kind] == 0) {
            kind++;
        }
        return kind;
    }

    /** Cuts what the pattern has of pieces still missing; answers whether that is anything, and a board is there. */
    boolean take(Pattern pattern) {
        int[] counts = new int[left.length];
        int used = 0;
        for (int i = 0; i < pattern.kinds().length; i++) {
            int kind = pattern.kinds()[i];
            counts[kind] = Math.min(pattern.counts()[i], left[kind]);
            used += counts[kind] > 0 ? 1 : 0;
        }
        if (used == 0 || boards[pattern.stock()] == 0) {
            return false;
        }
        for (int kind : pattern.kinds()) {
            left[kind] -= counts[kind];
        }
        boards[pattern.stock()]--;
        taken.add(Patterns.of(pattern.stock(), counts, used));
        return true;
    }
}
