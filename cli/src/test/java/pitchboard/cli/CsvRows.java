package pitchboard.cli;

import java.util.ArrayList;
import java.util.List;

/** Reads comma-separated rows (RFC 4180), the mark of UTF-8 left out. */
final class CsvRows {
    private final List<List<String>> rows = new ArrayList<>();
    private List<String> row = new ArrayList<>();
    private StringBuilder cell = new StringBuilder();

    private CsvRows() {}

    static List<List<String>> read(String csv) {
        CsvRows rows = new CsvRows();
        boolean quoted = false;
        String text = csv.startsWith("\ufeff") ? csv.substring(1) : csv;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (quoted && letter == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                rows.cell.append('"');
                i++;
            } else if (letter == '"') {
                quoted = !quoted;
            } else if (quoted || (letter != ',' && letter != '\r' && letter != '\n')) {
                rows.cell.append(letter);
            } else if (letter != '\r') {
                rows.end(letter == '\n');
            }
        }
        return rows.rows;
    }

    private void end(boolean ofRow) {
        row.add(cell.toString());
        cell = new StringBuilder();
        if (ofRow) {
            rows.add(row);
            row = new ArrayList<>();
        }
    }
}
