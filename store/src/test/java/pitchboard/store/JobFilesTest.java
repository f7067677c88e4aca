package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    rise: 8' 9 3/4"    | rise: 7..5                | 16 | measured > rise
                    rise: 8' 9 3/4"    | rise: 8' 9 3/4" 30 mm     | 16 | measured > rise
                    rise: 8' 9 3/4"    | raise: 8' 9 3/4"          | 16 | measured
                    where: outdoors    | where: outside            | 35 | measured > where
                    width: 40"         | width: 40                 | 0  | none
                    width: 40"         | width: 0"                 | 50 | wanted > width
                    width: 40"         | width: -40"               | 50 | wanted > width
                    count: 3 }         | count: 1 }                | 55 | wanted > stringers > count
                    count: 3 }         | count: three }            | 55 | wanted > stringers > count
                    radius: 3/8"       | bevel: 3/8"               | 54 | wanted > nosing
                    """)
    void a_wrong_line_is_found_and_its_field_named(String right, String wrong, int line, String field)
            throws IOException, FileTrouble {
        List<Problem> problems = problems(loft().replaceFirst(Pattern.quote(right), wrong));
        if (line == 0) {
            assertThat(problems).isEmpty();
            return;
        }
        assertThat(problems).isNotEmpty();
        assertThat(problems.get(0).field()).startsWith(field);
        assertThat(problems).allSatisfy(problem -> {
            assertThat(problem.line()).isPositive();
            assertThat(problem.expected()).isNotBlank();
        });
    }

    @Test
    void an_unknown_key_is_answered_with_the_one_that_was_meant() throws IOException, FileTrouble {
        List<Problem> problems = problems(loft().replace("rulebook:", "rulebok:"));
        assertThat(problems).anySatisfy(problem -> {
            assertThat(problem.read()).isEqualTo("rulebok");
            assertThat(problem.expected()).contains("rulebook");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    'a: &x 1'                      | anchor
                    'a: *x'                        | reference
                    'a: !!str 1'                   | tag
                    'a: 1\\n---\\nb: 2'            | document
                    'a: 1\\na: 2'                  | a
                    'a:\\n\\t- 1'                  | tab
                    'a: [1'                        | ]
                    """)
    void what_yaml_can_do_and_a_job_file_cannot_is_refused_in_plain_words(String text, String word)
            throws IOException, FileTrouble {
        List<Problem> problems = problems(text.replace("\\n", "\n").replace("\\t", "\t"));
        assertThat(problems).isNotEmpty();
        assertThat(problems.get(0).sentence()).contains(word).doesNotContain("snakeyaml", "Exception");
    }

    @Test
    void deep_nesting_is_refused() throws IOException, FileTrouble {
        assertThat(problems("a: " + "[".repeat(5000))).isNotEmpty();
        Path json = Files.writeString(folder.resolve("deep.json"), "[".repeat(100_000));
        assertThat(JobFiles.open(json, BOOKS)).isInstanceOf(JobFile.NotUnderstood.class);
    }

    @Test
    void a_mark_at_the_beginning_does_no_harm() throws IOException, FileTrouble {
        assertThat(open("\ufeff" + loft())).isInstanceOf(JobFile.Understood.class);
    }

    @Test
    void what_is_no_file_of_text_is_refused() throws IOException, FileTrouble {
        assertThat(problems("")).isNotEmpty();
        Path latin = Files.write(folder.resolve("latin.yaml"), "job: Stég".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(JobFiles.open(latin, BOOKS)).isInstanceOf(JobFile.NotUnderstood.class);
        assertThatThrownBy(() -> JobFiles.open(folder.resolve("missing.yaml"), BOOKS))
                .isInstanceOf(FileTrouble.class);
        assertThatThrownBy(() -> JobFiles.open(folder, BOOKS)).isInstanceOf(FileTrouble.class);
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
    void changes_to_another_book_or_without_a_name_behind_them_are_refused() throws IOException, FileTrouble {
        Path file = folder.resolve("changes.yaml");
        String changes = Files.readString(Path.of("../examples/local/county-changes.yaml"));
        Files.writeString(file, changes.replaceFirst("    said by: .*\n", ""));
        String said = JobFiles.openChanges(file, BOOKS)
                .match(read -> "", unread -> unread.problems().get(0).sentence());
        assertThat(said).contains("said by");
    }
}
