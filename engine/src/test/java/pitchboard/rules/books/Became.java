package pitchboard.rules.books;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The tables of {@code became.txt}: by heading, what became of each line of the documents. */
final class Became {
    private Became() {}

    static Map<String, Map<String, String>> read() {
        Map<String, Map<String, String>> tables = new LinkedHashMap<>();
        Map<String, String> table = Map.of();
        for (String line : text().lines().map(String::strip).toList()) {
            if (line.startsWith("[")) {
                table = new LinkedHashMap<>();
                tables.put(line.substring(1, line.length() - 1), table);
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                String[] cells = line.split("\\|", -1);
                table.put(cells[0].strip(), cells[1].strip());
            }
        }
        return tables;
    }

    private static String text() {
        try (InputStream in = Became.class.getResourceAsStream("became.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
