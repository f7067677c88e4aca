package pitchboard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
        String[] words = new String[begin.length + PRICED.length];
        System.arraycopy(begin, 0, words, 0, begin.length);
        System.arraycopy(PRICED, 0, words, begin.length, PRICED.length);
        String[] run = words.clone();
        for (int i = 0; i < run.length; i++) {
            Path there = Run.ROOT.resolve(run[i]);
            run[i] = run[i].startsWith("examples/") ? there.toString() : run[i];
        }
        return DocsTest.shown(String.join(" ", words), Run.of(run));
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
}
