package pitchboard.intake.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.intake.written.Written.Entry;
import pitchboard.intake.written.Written.Group;
import pitchboard.intake.written.Written.Sequence;
import pitchboard.intake.written.Written.Text;

/** JSON by RFC 8259 (The JavaScript Object Notation Data Interchange Format, 2017), without what it leaves open. */
final class JsonReaderTest {
    @Test
    void values_stay_the_text_that_was_typed_and_know_their_places() {
        String json = "{\"no\": \"no\",\n  \"list\": [12.50, -0, 1e3, true, {}, []]}\n";
        List<Written> items = List.of(
                new Text(new Spot(2, 12), "12.50"),
                new Text(new Spot(2, 19), "-0"),
                new Text(new Spot(2, 23), "1e3"),
                new Text(new Spot(2, 28), "true"),
                new Group(new Spot(2, 34), List.of()),
                new Sequence(new Spot(2, 38), List.of()));
        List<Entry> entries = List.of(
                new Entry(new Spot(1, 3), "no", new Text(new Spot(1, 9), "no")),
                new Entry(new Spot(2, 4), "list", new Sequence(new Spot(2, 11), items)));
        assertThat(JsonReader.read(json)).isEqualTo(new Transcript.Legible(new Group(new Spot(1, 1), entries)));
    }

    @Test
    void escapes_stand_for_their_characters() {
        assertThat(JsonReader.read("\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u00e9\\ud83d\\udE00\""))
                .isEqualTo(new Transcript.Legible(new Text(new Spot(1, 2), "\"\\/\b\f\n\r\t\u00e9\ud83d\ude00")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0", "10", "-1.5", "0.5", "1e5", "1E+5", "1e-05", "123456789012345678901234567890"})
    void numbers_of_the_standard_are_taken_as_typed(String number) {
        assertThat(JsonReader.read(number)).isEqualTo(new Transcript.Legible(new Text(new Spot(1, 1), number)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # What RFC 8259 does not allow.
            {"a": 012}        | line 1, column 7: found `0`, expected a number, or text in double quotes
            {"a": 0x10}       | line 1, column 7: found `0`, expected a number, or text in double quotes
            {"a": +1}         | line 1, column 7: found `+`, expected a number, or text in double quotes
            {"a": .5}         | line 1, column 7: found `.`, expected a number, or text in double quotes
            {"a": 5.}         | line 1, column 7: found `5`, expected a number, or text in double quotes
            {"a": 1e}         | line 1, column 7: found `1`, expected a number, or text in double quotes
            {"a": -}          | line 1, column 7: found `-`, expected a number, or text in double quotes
            {"a": 1_000}      | line 1, column 8: found `_`, expected a comma, or } to close the bracket
            {"a": NaN}        | line 1, column 7: found `N`, expected a number, or text in double quotes
            {"a": no}         | line 1, column 7: found `n`, expected a number, or text in double quotes
            {"a": 'b'}        | line 1, column 7: found `'`, expected a value
            {a: 1}            | line 1, column 2: found `a`, expected a name in double quotes
            {"a" 1}           | line 1, column 6: found `1`, expected a colon after the name `a`
            {"a": 1,}         | line 1, column 9: found `}`, expected a name in double quotes
            [1, 2,]           | line 1, column 7: found `]`, expected a value
            [1 2]             | line 1, column 4: found `2`, expected a comma, or ] to close the bracket
            {"a": 1           | line 1, column 8: expected a comma, or } to close the bracket, but the text ends
            "\\x"             | line 1, column 3: found `x`, expected one of " \\ / b f n r t u after a backslash
            "\\u00g0"         | line 1, column 6: found `g`, expected four hexadecimal digits after \\u
            {} {}             | line 1, column 4: found `{`, expected nothing after the last bracket
            // no comments    | line 1, column 1: found `/`, expected a value
            # What it leaves open.
            {"a": null}       | line 1, column 7: found `n`, expected a value: leave the whole line out where there is none
            {"a": 1, "b": 2, "a": 3} | line 1, column 19: a: found `a`, expected each name once in its group
            """)
    void everything_else_is_refused_where_it_stands(String json, String problem) {
        assertThat(problems(json)).containsExactly(problem);
    }

    @Test
    void a_line_break_or_tab_inside_a_text_is_refused() {
        assertThat(problems("{\"a\":\n \"b\nc\"}"))
                .containsExactly("line 2, column 4: found ` `, expected a double quote to close the text"
                        + " (line breaks inside are written \\n)");
        assertThat(problems("\"\t\"")).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\\ud83d\"", "\"\\ude00\"", "\"\\ud83dx\"", "\"\\ude00\\ud83d\""})
    void half_a_pair_of_surrogates_is_refused(String json) {
        assertThat(problems(json)).singleElement().asString().contains("whole characters");
    }

    @Test
    void every_name_that_comes_twice_is_told() {
        assertThat(problems("{\"a\": 1, \"a\": {\"b\": 1, \"b\": 2}}")).hasSize(2);
    }

    @Test
    void brackets_nest_as_deep_as_people_write_and_no_deeper() {
        int deepest = Written.DEEPEST;
        assertThat(JsonReader.read("[".repeat(deepest) + "]".repeat(deepest))).isInstanceOf(Transcript.Legible.class);
        assertThat(problems("[".repeat(500_000)))
                .containsExactly("line 1, column 33: found `[`, expected fewer brackets inside brackets, 32 at most");
        assertThat(problems("{\"a\":".repeat(500_000))).hasSize(1);
    }

    private static List<String> problems(String json) {
        return JsonReader.read(json)
                .match(
                        legible -> List.of(),
                        illegible -> illegible.problems().stream()
                                .map(Problem::sentence)
                                .toList());
    }
}
