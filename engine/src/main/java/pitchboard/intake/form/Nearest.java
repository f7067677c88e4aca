package pitchboard.intake.form;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the word that was probably meant. */
final class Nearest {
    private Nearest() {}

    /**
     * The known word that takes the fewest slips of the pen to get to; empty when all are too far, or when two are
     * equally near.
     */
    static Optional<String> find(String typed, List<String> known) {
        List<String> nearest = nearest(typed, known);
        return nearest.size() == 1 ? Optional.of(nearest.get(0)) : Optional.empty();
    }

    /** The known words that begin as typed; where none does, all that take equally few slips of the pen to get to. */
    static List<String> findAll(String typed, List<String> known) {
        List<String> longer =
                known.stream().filter(word -> isBeginning(typed, word)).toList();
        return typed.isBlank() || longer.isEmpty() ? nearest(typed, known) : longer;
    }

    private static boolean isBeginning(String typed, String word) {
        return word.length() > typed.length() && slips(typed, word.substring(0, typed.length())) == 0;
    }

    private static List<String> nearest(String typed, List<String> known) {
        int most = Math.max(1, Math.min(typed.length(), 20) / 3);
        List<String> near = known.stream()
                .filter(word -> Math.abs(word.length() - typed.length()) <= most && slips(typed, word) <= most)
                .sorted(Comparator.comparingInt(word -> slips(typed, word)))
                .toList();
        return near.stream()
                .filter(word -> slips(typed, word) == slips(typed, near.get(0)))
                .toList();
    }

    /** Letters to add, drop, change, or swap with a neighbour; capitals do not count. */
    private static int slips(String typed, String word) {
        int[][] steps = new int[typed.length() + 1][word.length() + 1];
        for (int i = 0; i <= typed.length(); i++) {
            for (int j = 0; j <= word.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : fewest(steps, typed, word, i, j);
            }
        }
        return steps[typed.length()][word.length()];
    }

    private static int fewest(int[][] steps, String typed, String word, int i, int j) {
        boolean same = isSame(typed, i, word, j);
        int change = steps[i - 1][j - 1] + (same ? 0 : 1);
        int best = Math.min(change, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && isSame(typed, i, word, j - 1) && isSame(typed, i - 1, word, j);
        return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
    }

    private static boolean isSame(String typed, int i, String word, int j) {
        return Character.toLowerCase(typed.charAt(i - 1)) == Character.toLowerCase(word.charAt(j - 1));
    }
}
