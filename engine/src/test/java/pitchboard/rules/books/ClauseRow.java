package pitchboard.rules.books;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Confidence;

/** One line of {@code clauses.csv}: one number or demand of one document. */
record ClauseRow(
        String book,
        String clause,
        String key,
        String comparator,
        String value,
        String unit,
        String about,
        Confidence confidence,
        String seenIn) {
    static List<ClauseRow> all() {
        return text().lines()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(ClauseRow::cells)
                .map(ClauseRow::of)
                .toList();
    }

    /** Whether it is one number, or two with {@code ..} between them: from the first to the second. */
    boolean isNumber() {
        return value.matches("[0-9.]+");
    }

    /** The number that limits on that side. */
    String number(boolean fromBelow) {
        String[] ends = value.split("\\.\\.", -1);
        return ends[fromBelow ? 0 : ends.length - 1];
    }

    private static ClauseRow of(List<String> cells) {
        return new ClauseRow(
                cells.get(0),
                cells.get(1),
                cells.get(2),
                cells.get(3),
                cells.get(4),
                cells.get(5),
                cells.get(6),
                Confidence.valueOf(cells.get(7)),
                cells.get(8));
    }

    private static String text() {
        try (InputStream in = ClauseRow.class.getResourceAsStream("clauses.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Commas inside double quotes belong to the cell. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
