package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written.Entry;
import pitchboard.intake.written.Written.Group;
import pitchboard.intake.written.Written.Sequence;
import pitchboard.intake.written.Written.Text;

/** YAML as people write it by hand, and what of it is refused. */
final class YamlReaderTest {
    @Test
    void values_stay_the_text_that_was_typed_and_know_their_places() {
        String yaml = """
                # a comment
                light: no
                count: 012
                list:
                  - { "at": 1_000, down: 8' 9 3/4" }
                  - '0x10'
                """;
        Group first = new Group(
                new Spot(5, 5),
                List.of(
                        new Entry(new Spot(5, 8), "at", new Text(new Spot(5, 13), "1_000")),
                        new Entry(new Spot(5, 20), "down", new Text(new Spot(5, 26), "8' 9 3/4\""))));
        List<Entry> entries = List.of(
                new Entry(new Spot(2, 1), "light", new Text(new Spot(2, 8), "no")),
                new Entry(new Spot(3, 1), "count", new Text(new Spot(3, 8), "012")),
                new Entry(
                        new Spot(4, 1),
                        "list",
                        new Sequence(new Spot(5, 3), List.of(first, new Text(new Spot(6, 6), "0x10")))));
        assertThat(YamlReader.read(yaml)).isEqualTo(new Transcript.Legible(new Group(new Spot(2, 1), entries)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no",
                "yes",
                "on",
                "~",
                "null",
                "012",
                "0o14",
                "0x10",
                "1_000",
                "1e3",
                ".5",
                "12:30:45",
                "2027-05-14",
                "<<",
                "=",
                ".inf"
            })
    void nothing_is_taken_for_more_than_its_letters(String typed) {
        assertThat(value("a: " + typed)).isEqualTo(typed);
        assertThat(value("a: '" + typed + "'")).isEqualTo(typed);
    }

    @Test
    void long_words_may_go_on_in_the_next_line() {
        assertThat(value("a: older houses\n  on the lake")).isEqualTo("older houses on the lake");
        assertThat(value("a: >\n  older houses\n  on the lake\n")).isEqualTo("older houses on the lake\n");
        assertThat(value("a:")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # What can hide something.
            a: &x 1           | line 1, column 4: a: found `&x`, expected a value without an anchor (quote it if it begins with &)
            a: *x             | line 1, column 4: a: found `*x`, expected the value itself, written out, instead of a reference to it
            a: !!str 1        | line 1, column 4: a: found `!tag:yaml.org,2002:str`, expected plain text without a tag (quote it if it begins with !)
            a: ! 1            | line 1, column 4: a: found `!!`, expected plain text without a tag (quote it if it begins with !)
            a: !!set {b}      | line 1, column 4: a: found `!tag:yaml.org,2002:set`, expected plain text without a tag (quote it if it begins with !)
            a: 1⏎---⏎b: 2     | line 2, column 1: found `---`, expected one document in the file
            a: 1⏎b: 2⏎a: 3    | line 3, column 1: found `a`, expected each name once in its group: this one is in line 1 already
            w: {a: 1, a: 3}   | line 1, column 11: w: found `a`, expected each name once in its group: this one is in line 1 already
            ? [a, b]⏎: 1      | line 1, column 3: expected a plain name before the colon
            # What is no YAML.
            a:⏎⇥- 1           | line 2, column 1: found `a tab`, expected blanks: a tab is as wide as each screen likes it to be
            a:⏎  b: 1⏎ ⇥c: 2  | line 3, column 2: found `a tab`, expected blanks: a tab is as wide as each screen likes it to be
            a: b: 1           | line 1, column 5: found `a: b: 1`, expected one colon on a line (words that hold a colon go in quotes)
            a: 1⏎b⏎c: 1       | line 3, column 1: found `c: 1`, expected a name with a colon after it
            a: 1⏎  b: 2       | line 2, column 4: found `b: 2`, expected one colon on a line (words that hold a colon go in quotes)
            a:⏎  b: 1⏎ c: 2   | line 3, column 2: found `c: 2`, expected all lines of a group to begin in the same column
            a: "1             | line 1, column 6: found `a: "1`, expected a quote to close the one that was opened
            a: {b: 1          | line 1, column 9: found `a: {b: 1`, expected a comma, or } to close the group
            a: [1             | line 1, column 6: found `a: [1`, expected a comma, or ] to close the list
            a: @b             | line 1, column 4: found `a: @b`, expected words in quotes when they begin with a sign such as @ or %
            a: "\\q"          | line 1, column 6: found `a: "\\q"`, expected single quotes around words that hold a backslash
            a: "\\xq"         | line 1, column 7: found `a: "\\xq"`, expected single quotes around words that hold a backslash
            # nothing         | line 1, column 1: expected lines such as `job: Stair to the sail loft`, not comments alone
            """)
    void the_rest_is_refused_in_plain_words(String yaml, String problem) {
        String text = yaml.replace('⏎', '\n').replace('⇥', '\t');
        assertThat(problems(text)).containsExactly(problem);
    }

    @Test
    void a_control_character_is_refused_where_it_stands() {
        assertThat(problems("a: 1\nb: x\u0007y"))
                .containsExactly("line 2, column 5: expected letters and signs, not the control character U+7");
    }

    /** The tenth power of ten, if it were unfolded. */
    @Test
    void a_bomb_of_references_is_refused_unexpanded() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(10)).append("]\n");
        }
        assertThat(problems(bomb.toString()))
                .containsExactly("line 1, column 5: a0: found `&a0`, expected a value without an anchor"
                        + " (quote it if it begins with &); and 99 more such further on");
    }

    @Test
    void references_do_not_hide_what_else_is_wrong() {
        assertThat(problems("a: 1\na: 2\nb: &b 3\nc: *b\nc: 4\n"))
                .containsExactly(
                        "line 2, column 1: found `a`, expected each name once in its group: this one is in line 1 already",
                        "line 3, column 4: b: found `&b`, expected a value without an anchor (quote it if it begins"
                                + " with &); and 1 more such further on",
                        "line 5, column 1: found `c`, expected each name once in its group: this one is in line 4"
                                + " already");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "? "})
    void deep_nesting_is_refused_at_once(String opening) {
        String deep = opening.repeat(WrittenFile.MOST_BYTES / opening.length());
        Assertions.assertTimeout(
                Duration.ofSeconds(10), () -> assertThat(problems(deep)).hasSize(1));
    }

    private static String value(String yaml) {
        Transcript.Legible legible = (Transcript.Legible) YamlReader.read(yaml);
        Group group = (Group) legible.written();
        return ((Text) group.entries().get(0).value()).value();
    }

    private static List<String> problems(String yaml) {
        return YamlReader.read(yaml)
                .match(
                        legible -> List.of(),
                        illegible -> illegible.problems().stream()
                                .map(Problem::sentence)
                                .toList());
    }
}
