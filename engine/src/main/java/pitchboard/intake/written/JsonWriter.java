package pitchboard.intake.written;

import java.util.List;
import pitchboard.intake.written.Written.Entry;

/** Writes a tree as JSON text, two blanks deeper for each group. Every value is written as a string. */
public final class JsonWriter {
    private final StringBuilder json = new StringBuilder();

    private JsonWriter() {}

    public static String write(Written written) {
        JsonWriter writer = new JsonWriter();
        writer.value(written, "\n");
        return writer.json.append('\n').toString();
    }

    /** A line break followed by the blanks that this line starts with travels along as {@code newLine}. */
    private void value(Written written, String newLine) {
        if (written instanceof Written.Text text) {
            json.append(quoted(text.value()));
        } else if (written instanceof Written.Group group) {
            group(group.entries(), newLine);
        } else if (written instanceof Written.Sequence sequence) {
            sequence(sequence.items(), newLine);
        }
    }

    private void group(List<Entry> entries, String newLine) {
        json.append('{');
        String before = "";
        for (Entry entry : entries) {
            json.append(before)
                    .append(newLine)
                    .append("  ")
                    .append(quoted(entry.key()))
                    .append(": ");
            value(entry.value(), newLine + "  ");
            before = ",";
        }
        json.append(entries.isEmpty() ? "}" : newLine + "}");
    }

    private void sequence(List<Written> items, String newLine) {
        json.append('[');
        String before = "";
        for (Written item : items) {
            json.append(before).append(newLine).append("  ");
            value(item, newLine + "  ");
            before = ",";
        }
        json.append(items.isEmpty() ? "]" : newLine + "]");
    }

    /** In double quotes, with everything escaped that JSON or YAML would not take as it is. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int named = "\"\\\b\f\n\r\t".indexOf(c);
            if (named >= 0) {
                quoted.append('\\').append("\"\\bfnrt".charAt(named));
            } else if (isPrintable(c)) {
                quoted.append(c);
            } else {
                quoted.append("\\u").append(fourDigits(c));
            }
        }
        return quoted.append('"').toString();
    }

    private static boolean isPrintable(char c) {
        boolean control = c < ' ' || (c >= 0x7f && c < 0xa0) || c == 0x2028 || c == 0x2029;
        boolean outside = c == 0xfeff || c >= 0xfffe;
        return !control && !outside;
    }

    private static String fourDigits(char c) {
        String digits = Integer.toHexString(c);
        return "0".repeat(4 - digits.length()) + digits;
    }
}
