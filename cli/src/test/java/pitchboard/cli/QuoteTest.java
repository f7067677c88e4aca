package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class QuoteTest {
    private static final Path LIST = Run.ROOT.resolve("examples/yard/harbour-street-timber.yaml");
    private static final Path RATES = Run.ROOT.resolve("examples/yard/two-of-us.yaml");

    @TempDir
    Path folder;

    private static Run quote(Path rates, String day, String... more) {
        return quoteOf(Run.example("boathouse-loft"), rates, day, more);
    }

    private static Run quoteOf(Path job, Path rates, String day, String... more) {
        String[] all = new String[8 + more.length];
        String[] begin = {"quote", job.toString(), "--yard", LIST.toString(), "--rates", rates.toString(), "--on", day};
        System.arraycopy(begin, 0, all, 0, 8);
        System.arraycopy(more, 0, all, 8, more.length);
        return Run.of(all);
    }

    private Path changed(String from, String to) throws IOException {
        String rates = Files.readString(RATES);
        assertThat(rates).contains(from);
        return Files.writeString(folder.resolve("rates.yaml"), rates.replace(from, to));
    }

    private static String text(Path pdf) throws IOException {
        try (var read = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(read);
        }
    }

    /**
     * By hand: lumber 498.56, sundries 42.60 + 23.60 + 12.80 = 79.00, labour 115 + 138 + 184 + 299 + 193.20 + 14 ft of
     * handrail at 0.15 h 193.20 + 276 = 1398.40, delivery 65.00: 2040.96. Overhead 12 % 244.92, profit 10 % of 2285.88
     * 228.59. Tax 6.5 % of 498.56 x 1.232 = 614.23 is 39.92, of 79.00 x 1.232 = 97.33 is 6.33. 2560.72, rounded up to
     * 2565.00. The deposit of 30 % is 769.50, the stage of 40 % 1026.00.
     */
    @Test
    void the_loft_is_quoted_as_by_hand() {
        Run run = quote(RATES, "2027-05-14");
        assertThat(run.out().replaceAll(" +", " "))
                .contains(
                        "cost 2040.96",
                        "overhead 244.92",
                        "profit 228.59",
                        "tax on lumber 39.92",
                        "tax on sundries 6.33",
                        "rounding 4.28",
                        "price 2565.00",
                        "due 769.50 with the order",
                        "due 1026.00 when the stringers hang");
    }

    @Test
    void the_customer_sees_the_price_and_none_of_the_crews_figures() throws IOException {
        quote(RATES, "2027-05-14", "--to", folder.toString());
        assertThat(text(folder.resolve("boathouse-loft-quote.pdf")))
                .contains("2565.00", "769.50", "valid until 13 June 2027", "for the customer", "Painting and staining")
                .doesNotContainIgnoringCase("overhead", "profit", "2040.96", "46.00", "per hour");
        assertThat(text(folder.resolve("boathouse-loft-cost.pdf"))).contains("2040.96", "244.92", "228.59", "2565.00");
        assertThat(Files.readString(folder.resolve("boathouse-loft-cost.csv"))).contains("price,total,,2565.00");
    }

    /** By hand: 26 boards x 4 stringers x 2 screws = 208, a tenth more 228.8: three boxes of 100 for 42.60. */
    @Test
    void what_is_bought_of_sundries_is_a_list_of_its_own() throws IOException {
        quote(RATES, "2027-05-14", "--to", folder.toString());
        assertThat(Files.readString(folder.resolve("boathouse-loft-sundries.csv")))
                .contains("what,needed,unit,with waste,pack,packs,each USD,together USD\r\n")
                .contains("tread screws,208,screws,228.8,3 in for treated wood - box of 100,3,14.20,42.60\r\n");
    }

    /** With its posts a foot from the toe the loft does not carry; and its guard is not said what it is built of. */
    @Test
    void a_stair_that_does_not_carry_is_not_offered_silently() throws IOException {
        String job = Files.readString(Run.example("boathouse-loft"));
        assertThat(job).contains("at: 5' 10\"");
        Path weak = Files.writeString(folder.resolve("boathouse-loft.yaml"), job.replace("at: 5' 10\"", "at: 1' 0\""));
        Run run = quoteOf(weak, RATES, "2027-05-14", "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.err())
                .contains(
                        "look first: Stair to the sail loft does not carry: the stringers sag",
                        "The guard: what it is");
        assertThat(text(folder.resolve("boathouse-loft-cost.pdf"))).contains("LOOK FIRST", "does not carry");
        assertThat(text(folder.resolve("boathouse-loft-quote.pdf")).replaceAll("\\s+", " "))
                .contains("does not meet every rule or check of strength")
                .contains("The guard: what it is built of is not settled.");
    }

    @Test
    void a_sound_stair_is_offered_without_a_word_of_doubt() throws IOException {
        String guard = "guard: { wanted: yes, height: 36\", gap: 4\", triangle: 5 3/4\" }";
        String built = """
                guard:
                    wanted: yes
                    height: 36"
                    posts: { width: 3 1/2", thickness: 3 1/2", greatest spacing: 4' 0", fixing: lapped, behind nosing: 5" }
                    top rail: { width: 3 1/2", thickness: 1 1/2" }
                    bottom rail: { width: 3 1/2", thickness: 1 1/2", above nosings: none }
                    infill: { kind: balusters, width: 1 1/2", thickness: 1 1/2", ball: 4" }
                """;
        String job = Files.readString(Run.example("dock-steps-that-carry"));
        assertThat(job).contains(guard);
        Path sound = Files.writeString(folder.resolve("steps.yaml"), job.replace(guard, built));
        Run run = Run.of(
                "quote",
                sound.toString(),
                "--yard",
                LIST.toString(),
                "--rates",
                RATES.toString(),
                "--on",
                "2027-05-14",
                "--to",
                folder.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(text(folder.resolve("steps-quote.pdf"))).doesNotContain("does not meet");
    }

    @Test
    void without_a_price_there_is_a_cost_sheet_and_no_quote() throws IOException {
        Path rates = changed("  - { of: adhesive, name: cartridge of 10 oz, fluid ounces: 10, price: 6.40 }\n", "");
        Files.writeString(
                rates,
                Files.readString(rates)
                        .replace(
                                "  - { of: adhesive, name: cartridge of 28 oz, fluid ounces: 28, price: 12.90 }\n",
                                ""));
        Run run = quote(rates, "2027-05-14", "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.err()).contains("no price, so no quote: adhesive: 48.75 ft of bead");
        assertThat(folder.resolve("boathouse-loft-quote.pdf")).doesNotExist();
        assertThat(text(folder.resolve("boathouse-loft-cost.pdf"))).contains("NO PRICE", "not complete");
    }

    @Test
    void old_prices_are_flagged_with_their_age() {
        assertThat(quote(RATES, "2027-06-18").err())
                .contains("prices of Harbour Street Timber are 46 days old on 2027-06-18; ask again");
    }

    @Test
    void two_currencies_are_refused() throws IOException {
        Run run = quote(changed("currency: USD", "currency: CAD"), "2027-05-14");
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err()).contains("amounts in CAD, but the price list", "is in USD");
    }

    @Test
    void a_bad_file_of_rates_and_a_bad_day_are_told_together() throws IOException {
        Path rates = changed("hour: 46.00", "hour: -46");
        Files.writeString(
                rates,
                Files.readString(rates)
                        .replace("share: 40 %", "share: 80 %")
                        .replace("fluid ounces: 10", "pounds: 10")
                        .replace("overhead: 12 %", "overhead: 12"));
        Run run = quote(rates, "14 May");
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err())
                .contains(
                        "--on: found `14 May`",
                        "hour: found `-46`",
                        "stages that with the deposit are at most 100 %",
                        "packs > 6",
                        "overhead: found `12`");
    }

    @Test
    void json_says_the_same_as_the_text() {
        String json = quote(RATES, "2027-05-14", "--json").out();
        assertThat(json)
                .contains("\"quotedOn\":\"2027-05-14\"", "\"validUntil\":\"2027-06-13\"", "\"complete\":true")
                .contains("\"direct\":\"2040.96\"", "\"overhead\":\"244.92\"", "\"total\":\"2565.00\"")
                .contains("The guard: what it is built of", "\"task\":\"tread\"", "\"due\":\"with the order\"")
                .contains("\"taxed\":\"614.23\"");
    }
}
