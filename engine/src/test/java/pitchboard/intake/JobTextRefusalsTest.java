package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a job's text cannot say: where, what was found, and what would be right. */
final class JobTextRefusalsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # Tape text that is none, from the place where it goes wrong.
            "8' 9 3/4" | "8' 9 17/16" | line 11, column 19: measured > rise: found `8' 9 17/16`, expected a fraction of less than one (write 10 1/16) where `17/16` stands
            "8' 9 3/4" | "3/0" | line 11, column 14: measured > rise: found `3/0`, expected 2, 4, 8, 16, 32 or 64 below the stroke: nothing is divided into no parts
            "8' 9 3/4" | "about nine feet" | line 11, column 14: measured > rise: found `about nine feet`, expected a length such as 8' 9 3/4", 105.75 in or 2686 mm where `about` stands
            # Absurd numbers.
            "8' 9 3/4" | 0 | line 11, column 13: measured > rise: found `0`, expected a length from 3" to 30'-0"
            "8' 9 3/4" | -105 | line 11, column 13: measured > rise: found `-105`, expected a length without a sign: it is never less than nothing where `-` stands
            "8' 9 3/4" | "52800 ft" | line 11, column 14: measured > rise: found `52800 ft`, expected a length from 3" to 30'-0"
            {"boards": 2, "width": 5.5, "gap": 0.25, "thickness": 1.5} | {"boards": 1, "width": "40 ft", "thickness": 1.5} | line 33, column 39: wanted > treads > width: found `40 ft`, expected a length from 2" to 1'-8"
            "number of risers": "free" | "number of risers": 1000 | line 39, column 35: wanted > steps > number of risers: found `1000`, expected free, or a whole number from 1 to 60
            "number of risers": "free" | "number of risers": 14.5 | line 39, column 35: wanted > steps > number of risers: found `14.5`, expected free, or a whole number from 1 to 60
            "count": 3 | "count": 1 | line 36, column 79: wanted > stringers > count: found `1`, expected a whole number from 2 to 12
            # Words.
            "one down" | "one dwon" | line 28, column 14: wanted > head: found `one dwon`, expected `one down`
            "concrete pad" | "the moon" | line 19, column 23: measured > foot lands on: found `the moon`, expected concrete pad, timber floor or compacted ground
            "units": "inches" | "units": "feet" | line 6, column 13: units: found `feet`, expected inches or millimetres
            "IRC 2021" | "IRC 2012" | line 9, column 16: rulebook: found `IRC 2012`, expected IRC 2018 or IRC 2021
            "mark to": "1/16" | "mark to": "1/10" | line 7, column 15: mark to: found `1/10`, expected halves, quarters, eighths and so on down to sixty-fourths, as on a tape (the nearest is 3/32)
            "mark to": "1/16" | "mark to": "1 mm" | line 7, column 15: mark to: found `1 mm`, expected 1/8, 1/16, 1/32 or 1/64 in
            "1 in 60" | "steep" | line 23, column 58: measured > landing above > fall: found `steep`, expected level, or a slope of at most 25 % such as 1 in 60, 1/4" per foot or 2 %
            "1 in 60" | "1 in 2" | line 23, column 58: measured > landing above > fall: found `1 in 2`, expected level, or a slope of at most 25 % such as 1 in 60, 1/4" per foot or 2 %
            # Keys.
            "treads": | "tread": | line 27, column 4: wanted > treads: expected a line such as `treads: { boards: 1, width: 11 1/4", thickness: 1 1/2" }` ;; line 33, column 6: wanted: found `tread`, expected `treads`
            "clear width": 38.5 | "rise": 100 | line 32, column 6: wanted: found `rise`, expected one of head, head fixing, foot, width, clear width, treads, risers, nosing, stringers, handrail, guard, steps, use, support, joints, strength
            "paper": "letter" | "width": 40 | line 8, column 4: found `width`, expected this line under `wanted:`
            # Shapes.
            "width": 40, | "width": [40], | line 31, column 14: wanted > width: found `a list`, expected a length from 1'-0" to 12'-0"
            {"boards": 2, "width": 5.5, "gap": 0.25, "thickness": 1.5} | 2 | line 33, column 15: wanted > treads: found `2`, expected lines such as { boards: 1, width: 11 1/4", thickness: 1 1/2" }
            "width": 40, | "width": "", | line 31, column 6: wanted > width: expected something after the colon, as in `width: 40"`
            """)
    void it_is_refused_where_it_stands(String old, String changed, String problems) {
        List<String> expected = List.of(problems.split(" ;; ", -1));
        assertThat(JobJson.problems(JobJson.with(old, changed))).containsExactlyElementsOf(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # Sizes that a kind needs.
            {"kind": "hanger board", "thickness": 1.5, "height": 5.5} | {"kind": "hanger board", "thickness": 1.5} | line 29, column 6: wanted > head fixing > height: expected a line such as `height: 5 1/2"` with a hanger board
            {"kind": "hanger board", "thickness": 1.5, "height": 5.5} | "ledger" | line 29, column 6: wanted > head fixing > thickness: expected a line such as `thickness: 1 1/2"` with a ledger ;; line 29, column 6: wanted > head fixing > height: expected a line such as `height: 5 1/2"` with a ledger
            {"kind": "sole board", "thickness": 1.5, "width": 11.25} | {"kind": "kicker", "height": 1.5} | line 30, column 6: wanted > foot > depth: expected a line such as `depth: 5 1/2"` with a kicker
            {"kind": "boards", "thickness": 0.75} | "boards" | line 34, column 6: wanted > risers > thickness: expected a line such as `thickness: 3/4"` with riser boards
            {"kind": "rounded", "radius": 0.375} | "bevelled" | line 35, column 6: wanted > nosing > bevel: expected a line such as `bevel: 3/8"` with a bevelled edge
            {"kind": "round", "diameter": 1.5} | {"kind": "rectangle", "width": 1.5} | line 37, column 51: wanted > handrail > grip > height: expected a line such as `height: 1 1/2"` with a rectangle
            , "gap": 0.25, "thickness": 1.5} | , "thickness": 1.5} | line 33, column 6: wanted > treads > gap: expected a line such as `gap: 1/4"` with more than one board
            # Sizes that a kind has not.
            "kind": "hanger board" | "kind": "bolts" | line 29, column 51: wanted > head fixing > thickness: found `1.5`, expected no such line with bolts ;; line 29, column 66: wanted > head fixing > height: found `5.5`, expected no such line with bolts
            {"kind": "sole board", "thickness": 1.5, "width": 11.25} | {"kind": "kicker", "height": 1.5, "depth": 3.5, "width": 5.5} | line 30, column 70: wanted > foot > width: found `5.5`, expected no such line with a kicker
            {"kind": "boards", "thickness": 0.75} | {"kind": "open", "thickness": 0.75} | line 34, column 45: wanted > risers > thickness: found `0.75`, expected no such line where risers are open
            "boards": 2, | "boards": 1, | line 33, column 50: wanted > treads > gap: found `0.25`, expected no gap where a tread is one board
            # Lines that contradict each other.
            "rise": "8' 9 3/4", | "rise": 100, "level line": {"readings": [{"out": 0, "down": 90}, {"out": 9, "down": 90}]}, | line 11, column 13: measured > rise: found `100`, expected either this line or `level line:`, not both
            "rise": "8' 9 3/4", | "level line": {"readings": [{"out": 9, "down": 90}, {"out": 9, "down": 91}]}, | line 11, column 32: measured > level line > readings: found `a list`, expected each reading farther out than the one before
            "rise": "8' 9 3/4", | "level line": {"readings": [{"out": 9, "down": 90}]}, | line 11, column 32: measured > level line > readings: found `a list`, expected a list of 2 to 40, each with lines such as { out: 6', down: 8' 9 3/4" }
            "from": -6, "to": 14 | "from": 14, "to": 14 | line 16, column 68: measured > overhead > 1 > to: found `14`, expected an end farther from the header than where it begins
            "finish to come above": "none" | "finish to come above": 2 | line 12, column 29: measured > finish to come above: found `2`, expected no more than the decking of the header, which counts this finish in
            "8' 9 3/4", | 4, "finish to come below": 5, | line 11, column 40: measured > finish to come below: found `5`, expected less than the rise
            "number of risers": "free" | "number of risers": 1 | line 39, column 14: wanted > steps: found `a group of lines`, expected two risers or more where the floor is the last step
            "thickness": 1.5, "count": 3 | "thickness": 5, "count": 9 | line 36, column 18: wanted > stringers: found `a group of lines`, expected stringers that fit side by side under the treads, tread overhangs included
            "boards": 2, "width": 5.5 | "boards": 6, "width": 12 | line 33, column 26: wanted > treads > boards: found `6`, expected boards that together, with their gaps, are a length from 5" to 2'-0"
            """)
    void lines_are_held_against_each_other(String old, String changed, String problems) {
        List<String> expected = List.of(problems.split(" ;; ", -1));
        String json = JobJson.with(old, changed);
        boolean twice = changed.contains("finish to come below");
        assertThat(JobJson.problems(twice ? json.replace("    \"finish to come below\": 0.75,\n", "") : json))
                .containsExactlyElementsOf(expected);
    }

    /** Nothing that is measured has a value of its own when its line is left out. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            job                   | line 1, column 1: job: expected a line such as `job: Stair to the sail loft`
            units                 | line 1, column 1: units: expected a line such as `units: inches`
            rulebook              | line 1, column 1: rulebook: expected a line such as `rulebook: IRC 2018`
            rise                  | line 10, column 4: measured > rise: expected a line such as `rise: 8' 9 3/4"` or a group `level line:` instead
            finish to come above  | line 10, column 4: measured > finish to come above: expected a line such as `finish to come above: 3/4"`
            finish to come below  | line 10, column 4: measured > finish to come below: expected a line such as `finish to come below: 3/4"`
            run available         | line 10, column 4: measured > run available: expected a line such as `run available: 11' 6"`
            header                | line 10, column 4: measured > header: expected a line such as `header: { what: loft beam, depth: 9 1/4", decking: 1 1/2" }`
            foot lands on         | line 10, column 4: measured > foot lands on: expected a line such as `foot lands on: concrete pad`
            left side             | line 10, column 4: measured > left side: expected a line such as `left side: open`
            right side            | line 10, column 4: measured > right side: expected a line such as `right side: open`
            where                 | line 10, column 4: measured > where: expected a line such as `where: indoors`
            head                  | line 27, column 4: wanted > head: expected a line such as `head: one down`
            head fixing           | line 27, column 4: wanted > head fixing: expected a line such as `head fixing: bolts`
            foot                  | line 27, column 4: wanted > foot: expected a line such as `foot: on the surface`
            width                 | line 27, column 4: wanted > width: expected a line such as `width: 40"`
            risers                | line 27, column 4: wanted > risers: expected a line such as `risers: open`
            stringers             | line 27, column 4: wanted > stringers: expected a line such as `stringers: { stock: 2x12, depth: 11 1/4", thickness: 1 1/2", count: 3 }`
            handrail              | line 27, column 4: wanted > handrail: expected a line such as `handrail: left`
            guard                 | line 27, column 4: wanted > guard: expected a line such as `guard: yes`
            """)
    void a_missing_line_is_shown_as_it_might_be_written(String key, String problem) {
        assertThat(JobJson.problems(JobJson.without(key))).containsExactly(problem);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"for", "place", "date", "mark to", "paper", "clear width", "nosing", "landing above", "light"})
    void a_line_that_nobody_has_to_say_may_be_left_out(String key) {
        assertThat(JobJson.problems(JobJson.without(key))).isEmpty();
    }

    @Test
    void all_problems_are_told_at_once_in_the_order_of_the_text() {
        String json = JobJson.with("\"one down\"", "\"sideways\"")
                .replace("\"8' 9 3/4\"", "\"9 17/16\"")
                .replace("\"count\": 3", "\"count\": 0")
                .replace("\"units\": \"inches\"", "\"unit\": \"inches\"");
        assertThat(JobJson.problems(json))
                .extracting(sentence -> sentence.substring(0, sentence.indexOf(", column")))
                .containsExactly("line 1", "line 6", "line 11", "line 28", "line 36");
    }

    @Test
    void a_bare_number_is_not_complained_about_while_its_unit_is_unknown() {
        List<String> problems =
                JobJson.problems(JobJson.without("units").replace("\"width\": 40,", "\"width\": 9999,"));
        assertThat(problems).containsExactly("line 1, column 1: units: expected a line such as `units: inches`");
        assertThat(JobJson.problems(JobJson.without("units").replace("\"width\": 40,", "\"width\": \"9999 mm\",")))
                .hasSize(2);
    }

    @Test
    void messages_speak_in_the_units_of_the_job() {
        String json = JobJson.with("\"units\": \"inches\"", "\"units\": \"millimetres\"")
                .replace("\"mark to\": \"1/16\",", "\"mark to\": \"0.5\",");
        List<String> problems = new ArrayList<>(JobJson.problems(json));
        assertThat(problems)
                .contains("line 31, column 14: wanted > width: found `40`,"
                        + " expected a length from 305 mm to 3658 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "\"job\"", "14", "[{}]"})
    void something_that_is_no_group_at_all_is_one_problem(String json) {
        assertThat(JobJson.problems(json)).hasSize(1).allMatch(problem -> problem.startsWith("line 1, column "));
    }

    @Test
    void an_empty_group_is_asked_for_every_needed_line() {
        assertThat(JobJson.problems("{}"))
                .extracting(problem -> problem.substring("line 1, column 1: ".length(), problem.indexOf(": exp")))
                .containsExactly("units", "job", "wanted", "measured", "rulebook");
    }
}
