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
        String[] all = new String[8 + more.length];
        String[] begin = {
            "quote",
            Run.example("boathouse-loft").toString(),
            "--yard",
            LIST.toString(),
            "--rates",
            rates.toString(),
            "--on",
            day
        };
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
     * By hand: lumber 408.04, sundries 28.40 + 11.80 + 12.80 = 53.00, labour 115 + 92 + 138 + 299 + 193.20 + 644 + 276 =
     * 1757.20, delivery 65.00: 2283.24. Overhead 12 % 273.99, profit 10 % of 2557.23 255.72. Tax 6.5 % of 408.04 x 1.232 =
     * 502.71 is 32.68, of 53.00 x 1.232 = 65.30 is 4.24. 2849.87, rounded up to 2850.00.
     */
    @Test
    void the_loft_is_quoted_as_by_hand() {
        Run run = quote(RATES, "2027-05-14");
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(run.out().replaceAll(" +", " "))
                .contains(
                        "cost 2283.24",
                        "overhead 273.99",
                        "profit 255.72",
                        "tax on lumber 32.68",
                        "tax on sundries 4.24",
                        "rounding 0.13",
                        "price 2850.00",
                        "due 855.00 with the order",
                        "due 1140.00 when the stringers hang");
    }

    @Test
    void the_customer_sees_the_price_and_none_of_the_crews_figures() throws IOException {
        Run run = quote(RATES, "2027-05-14", "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(text(folder.resolve("boathouse-loft-quote.pdf")))
                .contains("2850.00", "855.00", "holds until 2027-06-13", "for the customer", "Painting and staining")
                .doesNotContainIgnoringCase("overhead", "profit", "2283.24", "46.00", "per hour");
        assertThat(text(folder.resolve("boathouse-loft-cost.pdf"))).contains("2283.24", "273.99", "255.72", "2850.00");
        assertThat(Files.readString(folder.resolve("boathouse-loft-cost.csv"))).contains("price,total,,2850.00");
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
        assertThat(run.err()).contains("no price, so no quote: adhesive: 36.56 ft of bead");
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
}
