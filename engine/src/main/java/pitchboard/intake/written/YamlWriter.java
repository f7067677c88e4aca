package pitchboard.intake.written;

import java.util.List;
import pitchboard.intake.written.Written.Entry;

/**
 * Writes a tree as a job file: one line for each value, two blanks deeper for each group, plain words without quotes
 * wherever a YAML reader gives back the same characters.
 */
public final class YamlWriter {
    private static final String PLAIN_INSIDE = " '\"/.,()+_-";

    private final StringBuilder yaml = new StringBuilder();

    private YamlWriter() {}

    public static String write(Written.Group group) {
        YamlWriter writer = new YamlWriter();
        writer.entries(group.entries(), "", "");
        return writer.yaml.toString();
    }

    /** The first line may already have its blanks, after the dash of a sequence. */
    private void entries(List<Entry> entries, String firstBlanks, String blanks) {
        String before = firstBlanks;
        for (Entry entry : entries) {
            yaml.append(before).append(scalar(entry.key())).append(':');
            below(entry.value(), blanks);
            before = blanks;
        }
    }

    private void below(Written value, String blanks) {
        if (value instanceof Written.Text text) {
            yaml.append(' ').append(scalar(text.value())).append('\n');
        } else if (value instanceof Written.Group group) {
            yaml.append(group.entries().isEmpty() ? " {}\n" : "\n");
            entries(group.entries(), blanks + "  ", blanks + "  ");
        } else if (value instanceof Written.Sequence sequence) {
            yaml.append(sequence.items().isEmpty() ? " []\n" : "\n");
            sequence.items().forEach(item -> item(item, blanks + "  "));
        }
    }

    private void item(Written item, String blanks) {
        yaml.append(blanks).append('-');
        if (item instanceof Written.Group group && !group.entries().isEmpty()) {
            entries(group.entries(), " ", blanks + "  ");
        } else {
            below(item, blanks);
        }
    }

    private static String scalar(String text) {
        return isPlain(text) ? text : JsonWriter.quoted(text);
    }

    /** Narrower than YAML allows: starts and ends with what cannot be mistaken, and nothing odd between. */
    private static boolean isPlain(String text) {
        if (text.isEmpty() || !isWord(text.charAt(0)) || text.endsWith(" ")) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (!isWord(text.charAt(i)) && PLAIN_INSIDE.indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean isWord(char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }
}
