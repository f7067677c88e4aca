package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.intake.ChangesText;
import pitchboard.intake.JobText;
import pitchboard.intake.KeyLine;
import pitchboard.intake.rates.RatesText;
import pitchboard.intake.yard.YardText;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** What the pages show is what the program does. */
final class DocsTest {
    private static final String LOFT = "examples/boathouse-loft.yaml";
    private static final String RATES = "examples/yard/two-of-us.yaml";
    private static final String YARD = "examples/yard/harbour-street-timber.yaml";

    @TempDir
    Path folder;

    static String shown(String command, Run run) {
        return "```\n$ ./pitchboard " + command + "\n" + run.out().stripTrailing() + "\n```\n";
    }

    private static String loft() {
        return Run.ROOT.resolve(LOFT).toString();
    }

    @Test
    void the_readme_shows_the_job_file_and_the_choices_as_they_are() throws IOException {
        Page readme = Page.named("README.md");
        readme.holds("job", "```yaml\n" + Files.readString(Path.of(loft())).stripTrailing() + "\n```\n");
        readme.holds("choices", shown("choices " + LOFT, Run.of("choices", loft())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"01-elevation", "03-stringer"})
    void the_pictures_are_sheets_of_the_example(String sheet) throws IOException {
        Run.of("papers", loft(), "--to", folder.toString());
        Page.named("docs/pictures/" + sheet + ".svg")
                .is(Files.readString(folder.resolve("boathouse-loft-sheets/" + sheet + ".svg")));
    }

    @Test
    void the_command_line_page_shows_real_output() throws IOException {
        Page page = Page.named("docs/command-line.md");
        page.holds("help", shown("--help", Run.of("--help")));
        page.holds("rulebooks", shown("rulebooks", Run.of("rulebooks")));
        page.holds(
                "no-stair",
                shown(
                        "choices examples/crane-loft-cannot-be.yaml",
                        Run.of("choices", Run.example("crane-loft-cannot-be").toString())));
        page.holds("show", shown("show " + LOFT, Run.of("show", loft())));
    }

    @Test
    void every_key_of_a_job_file_is_explained() throws IOException {
        List<String> books = Books.all().stream().map(Rulebook::name).toList();
        Page page = Page.named("docs/job-file.md");
        page.holds("keys", table(JobText.keys(books)));
        page.holds("changes", table(ChangesText.keys(books)));
    }

    @Test
    void every_key_of_a_price_list_is_explained_and_its_example_shown() throws IOException {
        Page page = Page.named("docs/yard-file.md");
        page.holds("keys", table(YardText.keys()));
        page.holds(
                "list", "```yaml\n" + Files.readString(Run.ROOT.resolve(YARD)).stripTrailing() + "\n```\n");
        page.holds(
                "buy",
                shown(
                        "buy " + LOFT + " --yard " + YARD,
                        Run.of("buy", loft(), "--yard", Run.ROOT.resolve(YARD).toString())));
    }

    @Test
    void every_key_of_a_file_of_rates_is_explained_and_its_example_shown() throws IOException {
        Page page = Page.named("docs/rates-file.md");
        page.holds("keys", table(RatesText.keys()));
        page.holds(
                "rates", "```yaml\n" + Files.readString(Run.ROOT.resolve(RATES)).stripTrailing() + "\n```\n");
        String[] command = {"quote", LOFT, "--yard", YARD, "--rates", RATES, "--on", "2027-05-14"};
        String[] run = command.clone();
        for (int at : new int[] {1, 3, 5}) {
            run[at] = Run.ROOT.resolve(command[at]).toString();
        }
        page.holds("quote", shown(String.join(" ", command), Run.of(run)));
    }

    static String table(List<KeyLine> lines) {
        String rows = lines.stream().map(DocsTest::row).collect(Collectors.joining());
        return "| Key | What it says | What may be written | Left out |\n|---|---|---|---|\n" + rows;
    }

    private static String row(KeyLine line) {
        String written = line.inInches().equals(line.inMillimetres())
                ? line.inInches()
                : line.inInches() + "; in millimetres " + line.inMillimetres();
        return "| `%s` | %s | %s | %s |\n"
                .formatted(line.path(), line.meaning(), written.replace("|", "\\|"), line.leftOut());
    }

    @Test
    void every_field_of_the_json_is_explained() throws IOException {
        String page = Files.readString(Run.ROOT.resolve("docs/json.md"));
        TreeSet<String> fields = new TreeSet<>();
        for (Path example : Run.examples()) {
            Matcher names = Pattern.compile("\"(\\w+)\":")
                    .matcher(Run.of("show", "--json", "--elements", example.toString())
                            .out());
            while (names.find()) {
                fields.add(names.group(1));
            }
        }
        String bought = Run.of(
                        "buy",
                        "--json",
                        loft(),
                        "--yard",
                        Run.ROOT.resolve(YARD).toString())
                .out();
        Matcher names = Pattern.compile("\"(\\w+)\":").matcher(bought);
        while (names.find()) {
            fields.add(names.group(1));
        }
        assertThat(fields)
                .hasSizeGreaterThan(60)
                .allSatisfy(field -> assertThat(page).contains("`" + field + "`"));
    }

    @Test
    void every_example_is_in_the_list() throws IOException {
        String page = Files.readString(Run.ROOT.resolve("docs/job-file.md"));
        assertThat(Run.examples()).allSatisfy(example -> assertThat(page).contains("`" + example.getFileName() + "`"));
    }
}
