package pitchboard.documents.csv;

import java.util.List;

/**
 * Comma-separated rows (RFC 4180): quotes where needed, lines that end in carriage return and line feed. A cell that a
 * spreadsheet would take for a formula gets a blank in front.
 */
final class Csv {
    private final StringBuilder out = new StringBuilder();

    Csv row(String... cells) {
        return row(List.of(cells));
    }

    Csv row(List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
        }
        out.append("\r\n");
        return this;
    }

    private static String cell(String text) {
        String safe = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0 && !isNumber(text) ? " " + text : text;
        boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    private static boolean isNumber(String text) {
        return text.matches("-?[0-9]+(\\.[0-9]+)?");
    }

    String text() {
        return out.toString();
    }
}
