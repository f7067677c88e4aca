package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Every list opened by LibreOffice as its dialog would propose it, with all its guessing switched on, saved as a
 * spreadsheet and read again. Skipped where {@code soffice} is not on the path.
 */
final class SpreadsheetTest {
    private static final int MOST_SECONDS = 90;
    /** Comma, quotes, UTF-8, from the first line, English of the USA, quoted cells are guessed at too, special numbers. */
    private static final String AS_PROPOSED = "CSV:44,34,76,1,,1033,false,true";

    private static final String NASTY = "=1+1, \"caf\u00e9\" \u2264 5 \u00bd";

    @TempDir
    Path folder;

    private static Optional<Path> findSoffice() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .map(entry -> Path.of(entry).resolve("soffice"))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private Path changed(String name, String... changes) throws IOException {
        Path from = Run.ROOT.resolve("examples/yard").resolve(name);
        String text = Files.readString(from);
        for (int i = 0; i < changes.length; i += 2) {
            assertThat(text).contains(changes[i]);
            text = text.replace(changes[i], changes[i + 1]);
        }
        return Files.writeString(folder.resolve(name), text);
    }

    /** All lists there are, with names in them that a spreadsheet would like to make something else of. */
    private List<Path> lists() throws IOException {
        Path yard = Run.ROOT.resolve("examples/yard/harbour-street-timber.yaml");
        Path rates = changed(
                "two-of-us.yaml",
                "what: delivery by the yard",
                "what: '" + NASTY + "'",
                "name: sloped - galvanized",
                "name: 3/4");
        Path took = changed(
                "dock-steps-took.yaml", "who: the older one", "who: '@anna'", "what: the yard's bill", "what: 3/4");
        Path options = changed(
                "float-landing-options.yaml",
                "../dock",
                Run.ROOT.resolve("examples").toString().replace('\\', '/') + "/dock",
                "name: Balusters",
                "name: '1-2'",
                "name: Level boards",
                "name: '3/4'",
                "name: Wider, with balusters",
                "name: '007'");
        String steps = Run.example("dock-steps-that-carry").toString();
        String loft = Run.example("boathouse-loft").toString();
        String[] priced = {
            "--yard", yard.toString(), "--rates", rates.toString(), "--on", "2027-05-14", "--to", folder.toString()
        };
        run(List.of("papers", loft, "--to", folder.toString()));
        run(List.of("buy", loft, "--yard", yard.toString(), "--to", folder.toString()));
        run(with(List.of("quote", loft), priced));
        run(with(List.of("options", options.toString()), priced));
        run(with(List.of("afterwards", steps, "--took", took.toString()), priced));
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> with(List<String> command, String... more) {
        List<String> all = new ArrayList<>(command);
        all.addAll(List.of(more));
        return all;
    }

    private static void run(List<String> command) {
        Run run = Run.of(command.toArray(new String[0]));
        assertThat(run.code()).as(run.err()).isIn(ExitCode.DONE, ExitCode.FAILING);
    }

    private void convert(Path soffice, String to, List<Path> files, String... options) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                soffice.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless"));
        command.addAll(List.of(options));
        command.addAll(
                List.of("--convert-to", to, "--outdir", folder.resolve("out").toString()));
        files.forEach(file -> command.add(file.toString()));
        Path said = folder.resolve("soffice.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        boolean ended = process.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
        if (!ended) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        assertThat(ended)
                .as("soffice ended within %s s: %s", MOST_SECONDS, Files.readString(said))
                .isTrue();
    }

    @Test
    void every_list_goes_through_a_spreadsheet_and_comes_back_the_same() throws Exception {
        Optional<Path> soffice = findSoffice();
        assumeTrue(soffice.isPresent(), "no soffice on the path: the round trip through a spreadsheet is skipped");
        List<Path> lists = lists();
        assertThat(lists).hasSizeGreaterThanOrEqualTo(9);
        convert(soffice.get(), "ods", lists, "--infilter=" + AS_PROPOSED);
        for (Path list : lists) {
            String name = list.getFileName().toString().replace(".csv", ".ods");
            List<List<Cell>> sheet = sheet(folder.resolve("out").resolve(name));
            List<List<String>> rows = CsvRows.read(Files.readString(list, StandardCharsets.UTF_8));
            assertThat(rows).isNotEmpty();
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                    Cell cell = column < sheet.get(row).size() ? sheet.get(row).get(column) : Cell.EMPTY;
                    same(
                            name + " row " + (row + 1) + " column " + (column + 1),
                            rows.get(row).get(column),
                            cell);
                }
            }
        }
    }

    /** @param kind float, date, string; empty for an empty cell */
    private record Cell(String kind, String value, String text, String formula) {
        static final Cell EMPTY = new Cell("", "", "", "");
    }

    private static void same(String where, String written, Cell cell) {
        assertThat(cell.formula()).as(where).isEmpty();
        if (written.matches("-?[0-9]+(\\.[0-9]+)?")) {
            assertThat(cell.kind()).as(where + ": " + written).isEqualTo("float");
            assertThat(Double.parseDouble(cell.value())).as(where).isEqualTo(Double.parseDouble(written));
        } else if (written.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
            assertThat(cell.kind() + " " + cell.value()).as(where).isEqualTo("date " + written);
        } else {
            assertThat(cell.kind()).as(where + ": " + written).isEqualTo(written.isEmpty() ? "" : "string");
            assertThat(cell.text()).as(where).isEqualTo(written);
        }
    }

    private static List<List<Cell>> sheet(Path ods) throws Exception {
        try (ZipFile zip = new ZipFile(ods.toFile());
                InputStream content = zip.getInputStream(zip.getEntry("content.xml"))) {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            Element root = factory.newDocumentBuilder().parse(content).getDocumentElement();
            List<List<Cell>> rows = new ArrayList<>();
            NodeList found = root.getElementsByTagName("table:table-row");
            for (int i = 0; i < found.getLength(); i++) {
                rows.add(cells((Element) found.item(i)));
            }
            return rows;
        }
    }

    private static List<Cell> cells(Element row) {
        List<Cell> cells = new ArrayList<>();
        NodeList found = row.getElementsByTagName("table:table-cell");
        for (int i = 0; i < found.getLength(); i++) {
            Element cell = (Element) found.item(i);
            String times = cell.getAttribute("table:number-columns-repeated");
            String value = cell.getAttribute("office:value") + cell.getAttribute("office:date-value");
            Cell read = new Cell(
                    cell.getAttribute("office:value-type"), value, text(cell), cell.getAttribute("table:formula"));
            int repeated = times.isEmpty() ? 1 : Math.min(Integer.parseInt(times), 100);
            for (int j = 0; j < repeated; j++) {
                cells.add(read);
            }
        }
        return cells;
    }

    /** Its lines; a blank at either end is written as an element of its own. */
    private static String text(Element cell) {
        StringBuilder text = new StringBuilder();
        NodeList lines = cell.getElementsByTagName("text:p");
        for (int i = 0; i < lines.getLength(); i++) {
            text.append(i == 0 ? "" : "\n");
            NodeList pieces = lines.item(i).getChildNodes();
            for (int j = 0; j < pieces.getLength(); j++) {
                text.append(
                        pieces.item(j).getNodeName().equals("text:s")
                                ? blanks((Element) pieces.item(j))
                                : pieces.item(j).getTextContent());
            }
        }
        return text.toString();
    }

    private static String blanks(Element blank) {
        String count = blank.getAttribute("text:c");
        return " ".repeat(count.isEmpty() ? 1 : Integer.parseInt(count));
    }
}
