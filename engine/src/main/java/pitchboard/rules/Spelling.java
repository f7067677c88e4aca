package pitchboard.rules;

/** How far apart two names are, so that a misspelt one can be met with the one that was meant. */
final class Spelling {
    private Spelling() {}

    /** The fewest letters to put in, take out or swap for others (Levenshtein's distance). */
    static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            above = next(above, a.charAt(i - 1), i, b);
        }
        return above[b.length()];
    }

    private static int[] next(int[] above, char letter, int row, String b) {
        int[] line = new int[above.length];
        line[0] = row;
        for (int j = 1; j < line.length; j++) {
            int swapped = above[j - 1] + (letter == b.charAt(j - 1) ? 0 : 1);
            line[j] = Math.min(swapped, Math.min(above[j], line[j - 1]) + 1);
        }
        return line;
    }
}
