package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Options side by side: what is offered, what is not, and what is told of it. */
final class OptionsTest {
    private static final Path YARD = Run.ROOT.resolve("examples/yard");
    private static final String BASE = Run.example("dock-steps-that-carry").toString();
    private static final String OPEN = """
            offer: Two ways
            job: %s
            options:
              - name: As it is
              - name: Open
                changes: { wanted: { risers: open } }
            """.formatted(BASE);

    @TempDir
    Path folder;

    private static Run options(Path file, String... more) {
        List<String> all = new ArrayList<>(List.of(
                "options",
                file.toString(),
                "--yard",
                YARD.resolve("harbour-street-timber.yaml").toString(),
                "--rates",
                YARD.resolve("two-of-us.yaml").toString(),
                "--on",
                "2027-05-14"));
        all.addAll(List.of(more));
        return Run.of(all.toArray(new String[0]));
    }

    private Path said(String text) throws IOException {
        return Files.writeString(folder.resolve("options.yaml"), text);
    }

    private static String text(Path pdf) throws IOException {
        try (var read = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
        }
    }

    @Test
    void sound_options_stand_side_by_side_and_a_failing_one_is_kept_from_the_customer() throws IOException {
        Run run = options(YARD.resolve("float-landing-options.yaml"), "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.err()).contains("not offered: Open between the treads: it fails a rule");
        String customer = text(folder.resolve("float-landing-options-customer.pdf"));
        assertThat(customer)
                .contains("Balusters", "Level boards", "Wider, with balusters", "2645.00", "2640.00", "2855.00")
                .contains("5.00 less", "210.00 more", "We choose", "for 2855.00 USD")
                .doesNotContain("Open between")
                .doesNotContainIgnoringCase("overhead", "profit", "46.00", "from memory");
        assertThat(text(folder.resolve("float-landing-options-crew.pdf")))
                .contains(
                        "NO: it fails a rule", "4 FAIL", "carries, at most", "Cost: Open between the treads", "254.41");
        assertThat(Files.readString(folder.resolve("float-landing-options-crew.csv")))
                .contains("price,2645.00,2640.00,2855.00,1390.00\r\n");
    }

    /** The same figures as for a job of its own: nothing is taken over from one option to the next. */
    @Test
    void each_option_costs_what_it_costs_alone() throws IOException {
        Run alone = Run.of(
                "quote",
                BASE,
                "--yard",
                YARD.resolve("harbour-street-timber.yaml").toString(),
                "--rates",
                YARD.resolve("two-of-us.yaml").toString(),
                "--on",
                "2027-05-14");
        String price = alone.out()
                .lines()
                .filter(line -> line.startsWith("  price "))
                .findFirst()
                .orElseThrow();
        String total = price.replace("price", "").strip();
        assertThat(options(said(OPEN)).out().replaceAll(" +", " ")).contains("price " + total + " USD");
    }

    @Test
    void a_failing_option_is_offered_with_a_reason_and_the_customer_reads_both() throws IOException {
        Path file = said(OPEN + "    although: The building office allows it in a letter.\n");
        Run run = options(file, "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.err()).contains("offered although: Open fails a rule: ");
        assertThat(text(folder.resolve("options-customer.pdf")))
                .contains("does not meet every rule", "allows it in a letter");
        assertThat(text(folder.resolve("options-crew.pdf"))).contains("ALTHOUGH IT FAILS");
    }

    @Test
    void an_option_without_a_stair_or_a_price_is_not_offered() throws IOException {
        Path file = said("""
                offer: Two ways that cannot be
                job: %s
                options:
                  - name: Too short
                    changes: { measured: { run available: 2' } }
                  - name: Too thick
                    changes: { wanted: { treads: { thickness: 2 1/2" } } }
                """.formatted(BASE));
        Run run = options(file, "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.err())
                .contains("not offered: Too short: no stair fits", "not offered: Too thick: a price is missing");
        assertThat(folder.resolve("options-customer.pdf")).doesNotExist();
        assertThat(text(folder.resolve("options-crew.pdf"))).contains("no stair fits", "none");
    }

    @Test
    void what_is_wrong_in_the_changes_is_told_in_its_place_with_the_option() throws IOException {
        Path file = said("""
                offer: Two ways
                job: %s
                options:
                  - name: One
                    changes: { wanted: { risers: shut } }
                  - name: Two
                    changes:
                      wanted:
                        width: 40 feet
                        stairs: many
                  - name: Three
                    changes: { measured: { rise: left out } }
                """.formatted(BASE));
        Run run = options(file);
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err())
                .contains(":5:34: option `One`: wanted > risers")
                .contains(":9:16: option `Two`: wanted > width")
                .contains(":10:9: option `Two`: ")
                .contains("option `Three`: measured > rise");
    }

    @Test
    void what_is_wrong_with_the_file_itself_is_told_at_once() throws IOException {
        Run run = options(said("""
                offer: Ways
                options:
                  - name: One
                    says: first
                  - name: One
                    changes: many
                  - nmae: Two
                """));
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err()).contains("options.yaml:6:", "lines of a job file", "options.yaml:7:", "`name`");
        assertThat(options(said("offer: Ways\noptions:\n  - name: A\n  - name: A\n"))
                        .err())
                .contains("each name once");
        assertThat(options(said("offer: Ways\noptions:\n  - name: A\n  - name: B\n"))
                        .err())
                .contains("`job:`");
    }

    @Test
    void a_job_that_is_not_there_or_not_sound_is_told_once_under_its_own_name() throws IOException {
        Files.writeString(folder.resolve("bad.yaml"), "job: 1\n");
        Path file = said("offer: W\njob: bad.yaml\noptions:\n  - name: A\n  - name: B\n");
        Run run = options(file);
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err().lines().filter(line -> line.contains("bad.yaml") && line.contains("measured:")))
                .hasSize(1);
        Run gone = options(said("offer: W\njob: gone.yaml\noptions:\n  - name: A\n  - name: B\n"));
        assertThat(gone.code()).isEqualTo(ExitCode.NO_ACCESS);
    }
}
