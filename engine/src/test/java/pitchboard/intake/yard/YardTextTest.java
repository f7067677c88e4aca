package pitchboard.intake.yard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.buying.yard.BadEnd;
import pitchboard.buying.yard.Splicing;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Use;
import pitchboard.buying.yard.Yard;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.measure.Length;

/** A price list, line by line, and what is said against a bad one. */
final class YardTextTest {
    private static final String LIST = """
            {"yard": "Harbour Street Timber", "given by": "the counter", "date": "2027-05-03", "currency": "USD",
             "units": "inches", "kerf": "1/8", "end trim": "1/2", "keep from": "16",
             "splice": ["handrail", "riser boards"], "splice lap": "3",
             "stock": [
              {"name": "2x12", "thickness": "1 1/2", "width": "11 1/4", "species": "fir", "grade": "No. 2",
               "treatment": "ground contact", "over length": "1/2", "bad end": "2", "bad end will do for": ["head board"], "price per foot": "2.48",
               "lengths": ["8'", {"length": "16'", "price": "41.95", "in stock": "9"}]},
              {"name": "1x10", "thickness": "3/4", "width": "9 1/4", "for": ["riser boards"],
               "lengths": ["10'"]}],
             "rack": [{"stock": "2x12", "length": "41 1/4", "bad end": "1 1/2", "count": "2", "note": "behind the door"}]}
            """;

    private static YardText read(String json) {
        return YardText.of(JsonReader.read(json));
    }

    private static Yard yard() {
        return read(LIST).match(YardText.Understood::yard, unread -> {
            throw new AssertionError(unread.problems());
        });
    }

    private static List<String> problems(String from, String to) {
        assertThat(LIST).contains(from);
        return read(LIST.replace(from, to))
                .match(
                        understood -> List.of(),
                        unread -> unread.problems().stream()
                                .map(Problem::sentence)
                                .map(sentence -> sentence.replaceFirst("line \\d+, column \\d+: ", ""))
                                .toList());
    }

    @Test
    void prices_are_of_the_board_or_of_the_foot_to_the_cent() {
        Stock stock = yard().findStock("2x12").orElseThrow();
        assertThat(stock.priceOf(stock.lengths().get(0)).orElseThrow()).hasToString("19.84 USD");
        assertThat(stock.priceOf(stock.lengths().get(1)).orElseThrow()).hasToString("41.95 USD");
        assertThat(stock.lengths().get(1).inStock()).contains(9);
        assertThat(stock.realLength(stock.lengths().get(0))).isEqualTo(Length.inches(96, 1, 2));
    }

    @Test
    void a_length_without_a_price_has_none() {
        Stock stock = yard().findStock("1x10").orElseThrow();
        assertThat(stock.priceOf(stock.lengths().get(0))).isEqualTo(Optional.empty());
        assertThat(stock.uses()).containsExactly(Use.RISERS);
    }

    @Test
    void what_is_written_reads_as_the_same_list() {
        String again = JsonWriter.write(YardText.write(yard()));
        assertThat(read(again)).isEqualTo(new YardText.Understood(yard()));
    }

    @Test
    void what_may_be_spliced_and_what_is_bad_of_a_board_is_read() {
        assertThat(yard().splicing()).isEqualTo(new Splicing(List.of(Use.HANDRAIL, Use.RISERS), Length.inches(3)));
        assertThat(yard().findStock("2x12").orElseThrow().bad())
                .isEqualTo(new BadEnd(Length.inches(2), List.of(Use.HEAD)));
        assertThat(yard().rack().get(0).badEnd()).isEqualTo(Length.inches(1, 1, 2));
    }

    @Test
    void a_stringer_is_never_spliced() {
        assertThat(problems("\"splice\": [\"handrail\"", "\"splice\": [\"stringers\""))
                .singleElement()
                .asString()
                .contains("splice > 1: found `stringers`", "riser boards, foot board, rails or handrail");
    }

    @Test
    void a_bad_end_is_shorter_than_its_piece() {
        assertThat(problems("\"length\": \"41 1/4\", \"bad end\": \"1 1/2\"", "\"length\": \"2\", \"bad end\": \"2\""))
                .singleElement()
                .asString()
                .contains("less than the length of the piece");
    }

    @Test
    void a_price_of_nothing_or_less_is_refused() {
        String wanted = "an amount in USD, more than 0 and without a sign, such as 12.40";
        for (String bad : List.of("0", "0.00", "-41.95", "$41.95", "41,95", "41.95123", "about 40", "1e3", ".5")) {
            assertThat(problems("41.95", bad)).singleElement().asString().contains(wanted);
        }
    }

    @Test
    void an_amount_in_another_currency_is_refused_where_it_stands() {
        assertThat(problems("41.95", "41.95 EUR"))
                .singleElement()
                .asString()
                .startsWith("stock > 1 > lengths > 2 > price: found `41.95 EUR`")
                .contains("an amount in USD");
        assertThat(problems("41.95", "41.95 USD")).isEmpty();
    }

    @Test
    void a_rack_piece_of_no_length_is_refused() {
        assertThat(problems("41 1/4", "0")).singleElement().asString().startsWith("rack > 1 > length: found `0`");
    }

    @Test
    void a_rack_piece_of_no_stock_is_refused() {
        assertThat(problems("{\"stock\": \"2x12\"", "{\"stock\": \"2x14\""))
                .singleElement()
                .asString()
                .contains("pieces of a stock that is named above: 2x12, 1x10");
    }

    @Test
    void a_name_or_a_length_twice_is_refused() {
        assertThat(problems("\"name\": \"1x10\"", "\"name\": \"2x12\""))
                .singleElement()
                .asString()
                .contains("once");
        assertThat(problems("\"16'\"", "\"96\"")).singleElement().asString().contains("each length once");
    }

    @Test
    void a_price_per_foot_and_per_metre_together_are_refused() {
        assertThat(problems("\"price per foot\": \"2.48\"", "\"price per foot\": \"2.48\", \"price per metre\": \"8\""))
                .singleElement()
                .asString()
                .contains("no such line beside a price per foot");
    }

    @Test
    void every_problem_is_told_at_once() {
        String bad = LIST.replace("2027-05-03", "3 May")
                .replace("\"kerf\": \"1/8\"", "\"kerf\": \"2\"")
                .replace("41.95", "free")
                .replace("USD", "dollars");
        assertThat(read(bad))
                .isInstanceOfSatisfying(
                        YardText.NotUnderstood.class,
                        unread -> assertThat(unread.problems())
                                .extracting(Problem::field)
                                .containsExactly("date", "currency", "kerf", "stock > 1 > lengths > 2 > price"));
    }
}
