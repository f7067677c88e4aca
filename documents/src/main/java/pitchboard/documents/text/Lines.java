package pitchboard.documents.text;

import java.util.List;

/** Text in the making, wrapped to the width of a terminal. */
final class Lines {
    private static final int WIDTH = 96;

    private final StringBuilder out = new StringBuilder();

    Lines heading(String words) {
        if (out.length() > 0) {
            out.append('\n');
        }
        out.append(words).append('\n');
        return this;
    }

    /** A paragraph: the first line begins with {@code first}, the others with as many blanks. */
    Lines item(String first, String words) {
        String hang = " ".repeat(first.length());
        StringBuilder line = new StringBuilder(first);
        boolean fresh = true;
        for (String word : List.of(words.split(" ", -1))) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(hang);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        out.append(line).append('\n');
        return this;
    }

    /** Two columns: a name, padded, and what it is. */
    Lines entry(String name, String words) {
        return item("  " + padded(name, 28), words);
    }

    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    String text() {
        return out.toString();
    }
}
