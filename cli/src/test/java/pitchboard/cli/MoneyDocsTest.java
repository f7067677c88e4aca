package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pitchboard.intake.offers.OfferedText;
import pitchboard.intake.rates.TookText;

/** The pages about files beside the job file hold every line of them, their examples, and what comes of these. */
final class MoneyDocsTest {
    private static final String OPTIONS = "examples/yard/float-landing-options.yaml";
    private static final String TOOK = "examples/yard/dock-steps-took.yaml";
    private static final String[] PRICED = {
        "--yard",
        "examples/yard/harbour-street-timber.yaml",
        "--rates",
        "examples/yard/two-of-us.yaml",
        "--on",
        "2027-05-14"
    };

    private static String file(String name) throws IOException {
        return "```yaml\n" + Files.readString(Run.ROOT.resolve(name)).stripTrailing() + "\n```\n";
    }

    /** Runs it from wherever the tests are; shows it as from the project's folder. */
    private static String shown(String... begin) {
        return DocsTest.shown(String.join(" ", words(begin)), run(begin));
    }

    private static String[] words(String... begin) {
        String[] words = new String[begin.length + PRICED.length];
        System.arraycopy(begin, 0, words, 0, begin.length);
        System.arraycopy(PRICED, 0, words, begin.length, PRICED.length);
        return words;
    }

    private static Run run(String... begin) {
        String[] run = words(begin);
        for (int i = 0; i < run.length; i++) {
            Path there = Run.ROOT.resolve(run[i]);
            run[i] = run[i].startsWith("examples/") ? there.toString() : run[i];
        }
        return Run.of(run);
    }

    @Test
    void every_key_of_a_file_of_options_is_explained_and_its_example_shown() throws IOException {
        Page page = Page.named("docs/options-file.md");
        page.holds("keys", DocsTest.table(OfferedText.keys()));
        page.holds("options", file(OPTIONS));
        page.holds("side", shown("options", OPTIONS));
    }

    @Test
    void every_key_of_a_file_of_what_a_job_took_is_explained_and_its_example_shown() throws IOException {
        Page page = Page.named("docs/took-file.md");
        page.holds("keys", DocsTest.table(TookText.keys()));
        page.holds("took", file(TOOK));
        page.holds("after", shown("afterwards", "examples/dock-steps-that-carry.yaml", "--took", TOOK));
    }

    @Test
    void every_field_of_a_quote_as_json_is_explained() throws IOException {
        String page = Files.readString(Run.ROOT.resolve("docs/json.md"));
        String section = page.substring(page.indexOf("## What it costs"), page.indexOf("## Quantities"));
        Matcher names = Pattern.compile("\"(\\w+)\":")
                .matcher(run("quote", "--json", "examples/boathouse-loft.yaml").out());
        TreeSet<String> fields = new TreeSet<>();
        while (names.find()) {
            fields.add(names.group(1));
        }
        assertThat(fields)
                .hasSizeGreaterThan(30)
                .allSatisfy(field -> assertThat(section).contains("`" + field + "`"));
    }
}
