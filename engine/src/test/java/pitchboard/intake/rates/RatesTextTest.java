package pitchboard.intake.rates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.costing.LineKind;
import pitchboard.costing.Pack;
import pitchboard.costing.Pad;
import pitchboard.costing.Rates;
import pitchboard.costing.Sundry;
import pitchboard.costing.Task;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/** A file of rates, line by line, and what is said against a bad one. */
final class RatesTextTest {
    private static final String RATES = """
            {"rates": "Two of us", "date": "2027-04-01", "currency": "USD", "units": "inches", "people": "2",
             "hour": "46.00", "hours": [{"task": "tread", "hours": "0.25"}, {"task": "post", "hours": "0"}],
             "waste": "10 %",
             "packs": [{"of": "tread screws", "name": "a box", "pieces": "100", "price": "12.80"},
                       {"of": "adhesive", "name": "a cartridge", "fluid ounces": "28", "price": "9.90"},
                       {"of": "concrete", "name": "a bag", "pounds": "80", "price": "6.95"}],
             "pad": {"length": "4'", "width": "42", "thickness": "4"},
             "extras": [{"what": "delivery", "cost": "60"}],
             "overhead": "12.5 %", "profit": "10 %", "taxes": [{"on": "lumber", "rate": "7.25 %"}],
             "round up to": "5", "deposit": "30 %", "stages": [{"when": "halfway", "share": "40 %"}],
             "valid days": "21", "stale days": "45", "from": ["Two of us", "4 Boatyard Lane"],
             "terms": ["On weekdays."], "exclusions": ["Painting."]}
            """;
    private static final String FEWEST = """
            {"rates": "R", "date": "2027-04-01", "currency": "USD", "units": "inches", "people": "1",
             "hour": "40", "waste": "0 %", "overhead": "0 %", "profit": "0 %"}
            """;

    private static Rates read(String json) {
        return RatesText.of(JsonReader.read(json)).match(RatesText.Understood::rates, unread -> {
            throw new AssertionError(unread.problems());
        });
    }

    private static List<String> problems(String from, String to) {
        assertThat(RATES).contains(from);
        return RatesText.of(JsonReader.read(RATES.replace(from, to)))
                .match(
                        understood -> List.of(),
                        unread -> unread.problems().stream()
                                .map(Problem::sentence)
                                .map(sentence -> sentence.replaceFirst("line \\d+, column \\d+: ", ""))
                                .toList());
    }

    @Test
    void a_bag_by_the_kilogram_and_a_can_by_the_square_metre_are_read_and_written_so() {
        Rates rates = read(RATES.replace("\"pounds\": \"80\"", "\"kilograms\": \"25\"")
                .replace("\"of\": \"adhesive\"", "\"of\": \"finish\"")
                .replace("\"fluid ounces\": \"28\"", "\"covers square metres\": \"12.5\""));
        assertThat(rates.packs().get(2).holds()).isEqualTo(Pack.concreteOfKilograms(Ratio.of(25)));
        assertThat(rates.packs().get(1).holds()).isEqualTo(Pack.squareFeetOf(Ratio.of(25, 2)));
        assertThat(JsonWriter.write(RatesText.write(rates)))
                .contains("\"kilograms\": \"25\"", "\"covers square metres\": \"12.5\"")
                .doesNotContain("pounds");
    }

    @Test
    void every_line_says_what_it_says() {
        Rates rates = read(RATES);
        assertThat(rates.name() + ", " + rates.date() + ", " + rates.people()).isEqualTo("Two of us, 2027-04-01, 2");
        assertThat(rates.hour()).hasToString("46.00 USD");
        assertThat(rates.hoursOf(Task.TREAD)).isEqualTo(Ratio.of(1, 4));
        assertThat(rates.hoursOf(Task.POST)).isEqualTo(Ratio.ZERO);
        assertThat(rates.isFromMemory(Task.RISER)).isTrue();
        assertThat(rates.packs())
                .extracting(Pack::kind)
                .containsExactly(Sundry.TREAD_SCREWS, Sundry.ADHESIVE, Sundry.CONCRETE);
        assertThat(rates.packs().get(2).holds()).isEqualTo(Ratio.of(3, 5));
        assertThat(rates.pad()).contains(new Pad(Length.feet(4), Length.inches(42), Length.inches(4), Length.ZERO));
        assertThat(rates.overhead()).isEqualTo(Ratio.of(1, 8));
        assertThat(rates.taxOf(LineKind.LUMBER)).isEqualTo(Ratio.of(29, 400));
        assertThat(rates.taxOf(LineKind.LABOUR)).isEqualTo(Ratio.ZERO);
        assertThat(rates.roundTo()).hasToString("5.00 USD");
        assertThat(rates.stages()).extracting("when").containsExactly("halfway");
        assertThat(List.of(rates.validDays(), rates.staleDays())).containsExactly(21, 45);
        assertThat(rates.wording())
                .isEqualTo(new Rates.Wording(
                        List.of("Two of us", "4 Boatyard Lane"), List.of("On weekdays."), List.of("Painting.")));
    }

    @Test
    void what_is_left_out_is_as_the_page_says() {
        Rates rates = read(FEWEST);
        assertThat(rates.hours()).isEmpty();
        assertThat(rates.packs()).isEmpty();
        assertThat(rates.pad()).isEmpty();
        assertThat(rates.roundTo()).hasToString("0.01 USD");
        assertThat(rates.deposit()).isEqualTo(Ratio.ZERO);
        assertThat(List.of(rates.validDays(), rates.staleDays())).containsExactly(30, 60);
    }

    @ParameterizedTest
    @ValueSource(strings = {RATES, FEWEST})
    void what_is_written_reads_as_the_same_rates(String text) {
        Rates rates = read(text);
        assertThat(read(JsonWriter.write(RatesText.write(rates)))).isEqualTo(rates);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "hour": "46.00"          | "hour": "-46.00"           | hour: found `-46.00`
            "hour": "46.00"          | "hour": "0"                | hour: found `0`
            "price": "12.80"         | "price": "12.80 EUR"       | packs > 1 > price: found `12.80 EUR`
            "price": "12.80"         | "price": "0.00"            | packs > 1 > price: found `0.00`
            "pieces": "100"          | "pieces": "0"              | packs > 1 > pieces: found `0`
            "pieces": "100", "price" | "price"                    | packs > 1
            "fluid ounces": "28"     | "pounds": "28"             | packs > 2
            "overhead": "12.5 %"     | "overhead": "12.5"         | overhead: found `12.5`
            "overhead": "12.5 %"     | "overhead": "301 %"        | overhead: found `301 %`
            "waste": "10 %"          | "waste": "-1 %"            | waste: found `-1 %`
            "people": "2"            | "people": "0"              | people: found `0`
            "date": "2027-04-01"     | "date": "2027-04-31"       | date: found `2027-04-31`
            "date": "2027-04-01"     | "date": "1 April"          | date: found `1 April`
            "currency": "USD"        | "currency": "dollars"      | currency: found `dollars`
            "task": "post"           | "task": "tread"            | each task once
            "task": "post"           | "task": "idling"           | hours > 2 > task: found `idling`
            "on": "lumber"           | "on": "everything"         | taxes > 1 > on: found `everything`
            "share": "40 %"          | "share": "71 %"            | stages that with the deposit are at most 100 %
            "round up to": "5"       | "round up to": "0.001"     | whole coins
            "stale days": "45"       | "stale days": "0"          | stale days: found `0`
            "thickness": "4"         | "thickness": "1"           | pad > thickness: found `1`
            "profit": "10 %",        | "profits": "10 %",         | `profit`
            """)
    void what_is_wrong_is_told_in_its_place(String from, String to, String told) {
        assertThat(problems(from, to))
                .isNotEmpty()
                .anySatisfy(problem -> assertThat(problem).contains(told));
    }

    @Test
    void all_problems_are_told_at_once_in_the_order_of_the_text() {
        String bad = RATES.replace("\"46.00\"", "\"much\"")
                .replace("\"12.5 %\"", "\"some\"")
                .replace("\"21\"", "\"long\"");
        List<String> told = RatesText.of(JsonReader.read(bad))
                .match(
                        understood -> List.of(),
                        unread -> unread.problems().stream().map(Problem::field).toList());
        assertThat(told).containsExactly("hour", "overhead", "valid days");
    }
}
