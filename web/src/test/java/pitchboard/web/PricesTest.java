package pitchboard.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.documents.json.Json;

/** A price list and rates kept on the server, and what jobs cost by them. */
final class PricesTest {
    private static final Path YARD = Path.of("../examples/yard/harbour-street-timber.yaml");
    private static final Path RATES = Path.of("../examples/yard/two-of-us.yaml");

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() throws Exception {
        desk = Desk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Answer bring(String what, String file) throws Exception {
        return desk.put("/api/prices/" + what, Json.object().says("file", file).text());
    }

    private void bringBoth() throws Exception {
        assertThat(bring("yard", Files.readString(YARD)).status()).isEqualTo(200);
        assertThat(bring("rates", Files.readString(RATES)).status()).isEqualTo(200);
    }

    private Answer of(String which) throws Exception {
        return desk.get("/api/jobs/" + desk.example() + "/" + which);
    }

    private static String text(Answer pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void what_is_kept_is_told_and_outlives_the_server() throws Exception {
        assertThat(desk.get("/api/prices").body().replaceAll("\\s", "")).isEqualTo("{\"yard\":null,\"rates\":null}");
        bringBoth();
        desk.close();
        desk = Desk.in(folder);
        Answer kept = desk.get("/api/prices");
        assertThat(kept.text("yard", "name")).isEqualTo("Harbour Street Timber");
        assertThat(kept.text("rates", "currency")).isEqualTo("USD");
        assertThat(Files.readString(folder.resolve("prices/rates.yaml"))).isEqualTo(Files.readString(RATES));
    }

    @Test
    void the_quote_and_the_cost_sheet_are_those_of_the_command_line() throws Exception {
        bringBoth();
        Answer quote = of("quote.pdf?on=2027-05-14");
        assertThat(quote.header("Content-Type")).isEqualTo("application/pdf");
        assertThat(quote.header("Content-Disposition")).contains("Stair to the sail loft quote.pdf");
        assertThat(text(quote)).contains("2565.00 USD", "Two of Us, carpenters").doesNotContain("2040.96");
        assertThat(text(of("cost.pdf?on=2027-05-14"))).contains("2040.96", "LOOK FIRST");
        assertThat(new String(of("cost.csv?on=2027-05-14").bytes(), StandardCharsets.UTF_8))
                .contains("price,total,,2565.00\r\n");
        assertThat(of("costs?on=2027-05-14").text("price", "total")).isEqualTo("2565.00");
    }

    @Test
    void without_prices_or_a_day_there_is_no_quote() throws Exception {
        Answer none = of("quote.pdf?on=2027-05-14");
        assertThat(none.status()).isEqualTo(409);
        assertThat(none.body()).contains("there is no price list here yet");
        bringBoth();
        for (String day : new String[] {"", "?on=", "?on=14 May".replace(" ", "%20"), "?on=2027-02-30"}) {
            Answer refused = of("quote.pdf" + day);
            assertThat(refused.status()).isEqualTo(400);
            assertThat(refused.body()).contains("\"field\":\"on\"");
        }
        assertThat(desk.get("/api/jobs/nothing/costs?on=2027-05-14").status()).isEqualTo(404);
    }

    @Test
    void a_file_that_cannot_be_understood_is_refused_and_the_old_one_stays() throws Exception {
        bringBoth();
        Answer refused = bring("rates", Files.readString(RATES).replace("hour: 46.00", "hour: -46"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("\"field\":\"hour\"", "more than 0");
        assertThat(bring("yard", "yard: x").status()).isEqualTo(422);
        assertThat(of("costs?on=2027-05-14").text("price", "total")).isEqualTo("2565.00");
    }

    @Test
    void a_missing_price_and_two_currencies_are_told_instead_of_a_quote() throws Exception {
        bringBoth();
        bring("rates", Files.readString(RATES).replaceAll("(?m)^.*of: adhesive.*\n", ""));
        Answer missing = of("quote.pdf?on=2027-05-14");
        assertThat(missing.status()).isEqualTo(409);
        assertThat(missing.body()).contains("no price, so no quote: adhesive");
        assertThat(of("cost.pdf?on=2027-05-14").status()).isEqualTo(200);
        bring("rates", Files.readString(RATES).replace("currency: USD", "currency: CAD"));
        assertThat(of("costs?on=2027-05-14").body()).contains("the price list is in USD, the rates in CAD");
    }

    @Test
    void json_takes_the_place_of_yaml_and_yaml_of_json() throws Exception {
        bringBoth();
        bring("rates", """
                {"rates": "R", "date": "2027-04-01", "currency": "USD", "units": "inches", "people": "1",
                 "hour": "40", "waste": "0 %", "overhead": "0 %", "profit": "0 %"}
                """);
        assertThat(desk.get("/api/prices").text("rates", "name")).isEqualTo("R");
        bring("rates", Files.readString(RATES));
        assertThat(desk.get("/api/prices").text("rates", "name")).isEqualTo("Two of us, spring 2027");
    }
}
