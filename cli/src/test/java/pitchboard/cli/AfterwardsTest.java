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

/** What a job took: the papers, the lists, and the rates that would have been right. */
final class AfterwardsTest {
    private static final Path YARD = Run.ROOT.resolve("examples/yard");
    private static final Path RATES = YARD.resolve("two-of-us.yaml");

    @TempDir
    Path folder;

    private static Run after(Path took, String... more) {
        return after(took, RATES, more);
    }

    private static Run after(Path took, Path rates, String... more) {
        List<String> all = new ArrayList<>(List.of(
                "afterwards",
                Run.example("dock-steps-that-carry").toString(),
                "--took",
                took.toString(),
                "--yard",
                YARD.resolve("harbour-street-timber.yaml").toString(),
                "--rates",
                rates.toString(),
                "--on",
                "2027-05-14"));
        all.addAll(List.of(more));
        return Run.of(all.toArray(new String[0]));
    }

    private Path changed(String from, String to) throws IOException {
        String took = Files.readString(YARD.resolve("dock-steps-took.yaml"));
        assertThat(took).contains(from);
        return Files.writeString(folder.resolve("took.yaml"), took.replace(from, to));
    }

    /** 1.5 h of both for 5 treads; 2.25 h alone for the first stringer. */
    @Test
    void papers_and_lists_show_what_it_took_and_what_would_have_been_right() throws IOException {
        Run run = after(YARD.resolve("dock-steps-took.yaml"), "--to", folder.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(Files.readString(folder.resolve("dock-steps-that-carry-afterwards-hours.csv")))
                .contains(
                        "tread,5,5,1.25,1.5,0.25,0.25,no,0.3\r\n",
                        "first stringer,1,1,1.25,1.125,-0.125,1.25,yes,1.125");
        assertThat(Files.readString(folder.resolve("dock-steps-that-carry-afterwards-costs.csv")))
                .contains("sundries,102.40,115.50,13.10\r\n");
        assertThat(Files.readString(folder.resolve("dock-steps-that-carry-afterwards-noted.csv")))
                .contains("2027-06-07,first stringer,,2.25,1,,the older one\r\n");
        assertThat(Files.readString(folder.resolve("dock-steps-that-carry-hours.yaml")))
                .contains("  - { task: tread, hours: 0.3 }   # 1.5 h for 5, planned 0.25\n");
        try (var pdf = Loader.loadPDF(
                folder.resolve("dock-steps-that-carry-afterwards.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("+13.10", "the older one", "7 June 2027", "0.667");
        }
    }

    @Test
    void the_rates_are_written_anew_with_their_comments_and_never_over_a_file() throws IOException {
        Path made = folder.resolve("rates.yaml");
        Run run = after(YARD.resolve("dock-steps-took.yaml"), "--rates-to", made.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        String rates = Files.readString(made);
        assertThat(rates)
                .contains("# What a crew of two asks", "hours: 0.667", "people: 2                       # who work")
                .doesNotContain("hours: 0.25 }");
        Run second = after(YARD.resolve("dock-steps-took.yaml"), "--rates-to", made.toString());
        assertThat(second.code()).isEqualTo(ExitCode.NO_ACCESS);
        assertThat(second.err()).contains("is there already and is not written over");
        assertThat(Files.readString(made)).isEqualTo(rates);
        Run again = after(YARD.resolve("dock-steps-took.yaml"), made);
        assertThat(again.out().replaceAll(" +", " ")).contains("tread 1.5 1.5 0 0.3 0.3");
    }

    @Test
    void rates_as_json_are_written_as_json() throws IOException {
        Path made = folder.resolve("rates.json");
        after(YARD.resolve("dock-steps-took.yaml"), "--rates-to", made.toString());
        assertThat(Files.readString(made)).startsWith("{").contains("\"0.667\"");
        assertThat(after(YARD.resolve("dock-steps-took.yaml"), made).code()).isEqualTo(ExitCode.DONE);
    }

    @Test
    void what_was_not_noted_and_another_quote_are_told() throws IOException {
        Path took = changed("  - { date: 2027-06-08, task: tread, hours: 1.5 }\n", "");
        Files.writeString(took, Files.readString(took) + "\ninputs: AAAA-AAAA\n");
        Run run = after(took);
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.err()).contains("not noted: hours of: tread", "noted for the quote AAAA-AAAA, held against");
    }

    @Test
    void everything_wrong_in_the_notes_is_told_at_once() throws IOException {
        Path took = changed("task: setting up, hours: 2.5", "task: idling, hours: -2");
        Files.writeString(
                took,
                Files.readString(took)
                        .replace("for: lumber", "for: labour")
                        .replace("cost: 101.30", "cost: -101.30")
                        .replace("2027-06-09", "2027-06-31")
                        .replace("cost: 65.00", "cost: 65.00 EUR"));
        Run run = after(took);
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err())
                .contains("hours > 1 > task: found `idling`", "hours > 1 > hours: found `-2`")
                .contains("costs > 1 > for: found `labour`, expected lumber, sundries or extras")
                .contains("costs > 2 > cost: found `-101.30`", "found `2027-06-31`", "found `65.00 EUR`");
    }

    @Test
    void two_currencies_are_refused() throws IOException {
        Run run = after(changed("currency: USD", "currency: CAD"));
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err()).contains("amounts in CAD, but the rates are in USD");
    }
}
