package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.intake.JobText;
import pitchboard.intake.Notes;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.rules.Amendment;

final class JobFilesTest {
    private static final List<String> BOOKS = List.of("IRC 2018", "IRC 2021", "AD K 2013 private");

    @TempDir
    Path folder;

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static String loft() throws IOException {
        return Files.readString(Path.of("../examples/boathouse-loft.yaml"));
    }

    private JobFile open(String text) throws IOException, FileTrouble {
        return JobFiles.open(Files.writeString(folder.resolve("job.yaml"), text), BOOKS);
    }

    private List<Problem> problems(String text) throws IOException, FileTrouble {
        return open(text).match(understood -> List.of(), JobFile.NotUnderstood::problems);
    }

    private static Notes notes(JobFile file) {
        return ((JobFile.Understood) file).notes();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_says_the_same_as_yaml_and_as_json(Path example) throws IOException, FileTrouble {
        Notes notes = notes(JobFiles.open(example, BOOKS));
        Path json = Files.writeString(folder.resolve("job.json"), JsonWriter.write(JobText.write(notes)));
        Files.createDirectories(folder.resolve("local"));
        Files.copy(Path.of("../examples/local/county-changes.yaml"), folder.resolve("local/county-changes.yaml"));
        assertThat(notes(JobFiles.open(json, BOOKS))).isEqualTo(notes);
        Path again = folder.resolve("again.yaml");
        JobFiles.save(again, notes);
        assertThat(notes(JobFiles.open(again, BOOKS))).isEqualTo(notes);
    }

    @Test
    void what_was_typed_stays_what_was_typed() throws IOException, FileTrouble {
        for (String typed : List.of("no", "012", "1_000", "0x10", "1e3", "~", "null", "2027-05-14", ".5")) {
            String text = loft().replace("job: Stair to the sail loft", "job: " + typed);
            assertThat(notes(open(text)).brief().title().job()).isEqualTo(typed);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
                    rise: 8' 9 3/4"    | rise: 7..5            | line 16, column 11: measured > rise: found `7..5`, expected one decimal point in a number where `.` stands
                    rise: 8' 9 3/4"    | rise: 8' 9 3/4" 30 mm | line 16, column 19: measured > rise: found `8' 9 3/4" 30 mm`, expected nothing after the inches where `30` stands
                    rise: 8' 9 3/4"    | rise: 3/0             | line 16, column 9: measured > rise: found `3/0`, expected 2, 4, 8, 16, 32 or 64 below the stroke: nothing is divided into no parts
                    rise: 8' 9 3/4"    | rise: 9 17/16         | line 16, column 11: measured > rise: found `9 17/16`, expected a fraction of less than one (write 10 1/16) where `17/16` stands
                    rise: 8' 9 3/4"    | raise: 8' 9 3/4"      | line 15, column 1: measured > rise: expected a line such as `rise: 8' 9 3/4"` or a group `level line:` instead ;; line 16, column 3: measured: found `raise`, expected `rise`
                    where: outdoors    | where: outside        | line 33, column 10: measured > where: found `outside`, expected indoors or outdoors
                    width: 40"         | width: 40 ft          | line 49, column 10: wanted > width: found `40 ft`, expected a length from 1'-0" to 12'-0"
                    width: 40"         | width: 0"             | line 49, column 10: wanted > width: found `0"`, expected a length from 1'-0" to 12'-0"
                    width: 40"         | width: -40"           | line 49, column 10: wanted > width: found `-40"`, expected a length without a sign: it is never less than nothing where `-` stands
                    count: 4 }         | count: 1 }            | line 54, column 71: wanted > stringers > count: found `1`, expected a whole number from 2 to 12
                    count: 4 }         | count: three }        | line 54, column 71: wanted > stringers > count: found `three`, expected a whole number from 2 to 12
                    radius: 3/8"       | bevel: 3/8"           | line 53, column 3: wanted > nosing > radius: expected a line such as `radius: 3/8"` with a rounded edge ;; line 53, column 35: wanted > nosing > bevel: found `3/8"`, expected no such line with a rounded edge
                    """)
    void a_wrong_line_is_refused_where_it_stands(String right, String wrong, String problems)
            throws IOException, FileTrouble {
        assertThat(problems(loft().replaceFirst(Pattern.quote(right), wrong)))
                .extracting(Problem::sentence)
                .containsExactly(problems.split(" ;; ", -1));
    }

    @Test
    void a_number_without_a_unit_counts_what_the_job_says() throws IOException, FileTrouble {
        String bare = loft().replaceFirst("width: 40\"", "width: 40");
        assertThat(bare).isNotEqualTo(loft());
        assertThat(notes(open(bare))).isEqualTo(notes(open(loft())));
    }

    @Test
    void an_unknown_key_is_answered_with_the_one_that_was_meant() throws IOException, FileTrouble {
        List<Problem> problems = problems(loft().replace("rulebook:", "rulebok:"));
        assertThat(problems).anySatisfy(problem -> {
            assertThat(problem.read()).isEqualTo("rulebok");
            assertThat(problem.expected()).contains("rulebook");
        });
    }

    /** What the messages show as missing lines, put together, is a job. */
    @Test
    void the_lines_that_messages_ask_for_can_be_read() throws IOException, FileTrouble {
        StringBuilder job = new StringBuilder();
        for (Problem problem : problems("for: somebody")) {
            String expected = problem.expected();
            job.append(expected, expected.indexOf('`') + 1, expected.lastIndexOf('`'))
                    .append('\n');
        }
        assertThat(problems(job.toString())).isEmpty();
    }

    /** Letters taken out, doubled, exchanged: there is always an answer, never a fault. */
    @Test
    void whatever_is_typed_gets_an_answer() throws IOException, FileTrouble {
        String loft = loft();
        SplittableRandom random = new SplittableRandom(7);
        String letters = "0123456789'\"/ -:{}[],#ab\n\t&*!|>½″";
        for (int i = 0; i < 1500; i++) {
            StringBuilder text = new StringBuilder(loft);
            for (int changes = random.nextInt(1, 6); changes > 0; changes--) {
                int at = random.nextInt(text.length());
                text.setCharAt(at, letters.charAt(random.nextInt(letters.length())));
                if (random.nextBoolean()) {
                    text.deleteCharAt(random.nextInt(text.length()));
                }
            }
            assertThat(open(text.toString())).isNotNull();
        }
    }

    @Test
    void local_changes_are_found_from_where_the_job_is() throws IOException, FileTrouble {
        JobFile.Understood store =
                (JobFile.Understood) JobFiles.open(Path.of("../examples/sail-store-local.yaml"), BOOKS);
        JobFile.Changes changes = store.changes().orElseThrow();
        assertThat(changes.local().amendments()).extracting(Amendment::rule).contains("rise-at-most", "run-at-least");
        assertThat(changes.file()).isEqualTo(Path.of("../examples/local/county-changes.yaml"));
    }

    @Test
    void changes_to_another_book_than_the_jobs_are_refused_in_their_own_file() throws IOException, FileTrouble {
        JobFile.NotUnderstood refused =
                (JobFile.NotUnderstood) openWithChanges(changes().replace("based on: IRC 2021", "based on: IRC 2018"));
        assertThat(refused.file()).isEqualTo(folder.resolve("town.yaml"));
        assertThat(refused.problems())
                .singleElement()
                .satisfies(problem ->
                        assertThat(problem.sentence()).endsWith("based on: found `IRC 2018`, expected `IRC 2021`"));
    }

    @Test
    void a_change_with_nobody_behind_it_is_refused() throws IOException, FileTrouble {
        JobFile.NotUnderstood refused =
                (JobFile.NotUnderstood) openWithChanges(changes().replaceFirst("    said by: .*\n", ""));
        assertThat(refused.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.field()).isEqualTo("changes > 1 > said by"));
    }

    @Test
    void changes_can_come_on_top_of_others_and_then_hold_over_them() throws IOException, FileTrouble {
        Files.createDirectories(folder.resolve("county"));
        Files.writeString(folder.resolve("county/county.yaml"), changes());
        JobFile.Understood job = (JobFile.Understood) openWithChanges(TOWN);
        JobFile.Changes town = job.changes().orElseThrow();
        assertThat(town.fromTheBookUp())
                .extracting(JobFile.Changes::file)
                .containsExactly(folder.resolve("county/county.yaml"), folder.resolve("town.yaml"));
        assertThat(town.together().basedOn()).isEqualTo("IRC 2021");
        assertThat(town.together().amendments())
                .extracting(each -> each.rule() + " by " + each.saidBy())
                .containsExactly(
                        "run-at-least by Heron County building office, order 12",
                        "top-run-at-least by Heron County building office, order 12",
                        "rise-at-most by the town of Heronsby",
                        "handrail-height-at-least by the town of Heronsby");
    }

    @Test
    void changes_that_are_based_on_each_other_are_refused_where_the_circle_closes() throws IOException, FileTrouble {
        Files.createDirectories(folder.resolve("county"));
        Files.writeString(
                folder.resolve("county/county.yaml"),
                changes().replace("based on: IRC 2021", "based on: ../town.yaml"));
        JobFile.NotUnderstood refused = (JobFile.NotUnderstood) openWithChanges(TOWN);
        assertThat(refused.file()).isEqualTo(folder.resolve("county/county.yaml"));
        assertThat(refused.problems())
                .extracting(Problem::sentence)
                .containsExactly(
                        "line 3, column 11: based on: found `../town.yaml`, expected `IRC 2021`, or a file that is"
                                + " not based on this one in turn");
    }

    @Test
    void changes_based_on_themselves_are_a_circle_too() throws IOException, FileTrouble {
        JobFile.NotUnderstood refused =
                (JobFile.NotUnderstood) openWithChanges(changes().replace("IRC 2021", "town.yaml"));
        assertThat(refused.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.line()).isEqualTo(3));
    }

    @Test
    void what_the_lowest_file_is_based_on_must_be_the_book_of_the_job() throws IOException, FileTrouble {
        Files.createDirectories(folder.resolve("county"));
        Files.writeString(
                folder.resolve("county/county.yaml"), changes().replace("based on: IRC 2021", "based on: IRC 2018"));
        JobFile.NotUnderstood refused = (JobFile.NotUnderstood) openWithChanges(TOWN);
        assertThat(refused.file()).isEqualTo(folder.resolve("county/county.yaml"));
        assertThat(refused.problems())
                .extracting(Problem::sentence)
                .containsExactly("line 3, column 11: based on: found `IRC 2018`, expected `IRC 2021`");
    }

    @Test
    void a_missing_file_below_is_trouble_that_names_it() {
        assertThatThrownBy(() -> openWithChanges(TOWN))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("county.yaml: there is no such file");
    }

    @Test
    void a_missing_file_of_changes_is_trouble_that_names_it() {
        assertThatThrownBy(() -> open(loft() + "\nlocal changes: nowhere.yaml\n"))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("nowhere.yaml: there is no such file");
    }

    private static final String TOWN = """
            based on: county/county.yaml
            changes:
              - rule: rise-at-most
                limit: 8"
                said by: the town of Heronsby
              - rule: handrail-height-at-least
                limit: 36"
                said by: the town of Heronsby
            """;

    private static String changes() throws IOException {
        return Files.readString(Path.of("../examples/local/county-changes.yaml"));
    }

    private JobFile openWithChanges(String changes) throws IOException, FileTrouble {
        Files.writeString(folder.resolve("town.yaml"), changes);
        return open(loft() + "\nlocal changes: town.yaml\n");
    }
}
