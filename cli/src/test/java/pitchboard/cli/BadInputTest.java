package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be used is refused with one clear message each, the right exit code, and nothing left behind. */
final class BadInputTest {
    @TempDir
    Path folder;

    private Path job(String replace, String with) throws IOException {
        String text = Files.readString(Run.example("boathouse-loft"));
        assertThat(text).contains(replace);
        return Files.writeString(folder.resolve("job.yaml"), text.replace(replace, with));
    }

    private Run papers(Path file) {
        return Run.of(
                "papers", file.toString(), "--to", folder.resolve("papers").toString());
    }

    private void assertRefused(Run run, int code, String... words) {
        assertThat(run.code()).isEqualTo(code);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(words).doesNotContain("\tat ", "Exception");
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
                    rise: 8' 9 3/4"       | rise: 0              | measured > rise: found `0`
                    rise: 8' 9 3/4"       | rise: -8'            | measured > rise: found `-8'`
                    rise: 8' 9 3/4"       | rise: 3/0            | measured > rise: found `3/0`
                    rise: 8' 9 3/4"       | rise: 9 17/16        | 10 1/16
                    rise: 8' 9 3/4"       | rise: 10 miles       | measured > rise
                    treads: { boards: 2, width: 5 1/2" | treads: { boards: 2, width: 40 ft | width: found `40 ft`
                    width: 40"            | width: 40 ft         | wanted > width: found `40 ft`
                    number of risers: free| number of risers: 1000 | number of risers: found `1000`
                    rulebook: IRC 2021    | rulebook: IRC 1821   | rulebook: found `IRC 1821`
                    units: inches         | unit: inches         | unit
                    light: yes            | light: *moon         | *moon
                    """)
    void a_wrong_line_is_named_with_its_place_and_what_would_be_right(String right, String wrong, String said)
            throws IOException {
        Path file = job(right, wrong);
        Run run = papers(file);
        assertRefused(run, ExitCode.NOT_UNDERSTOOD, said);
        assertThat(run.err()).containsPattern("job\\.yaml:[0-9]+:[0-9]+: ");
    }

    @Test
    void every_problem_is_told_at_once() throws IOException {
        Path file = job("  rise: 8' 9 3/4\"", "  rise: 0");
        Files.writeString(file, Files.readString(file).replace("width: 40\"", "width: 40 ft"));
        assertThat(papers(file).err().lines()).hasSize(2);
    }

    @Test
    void a_local_change_that_makes_no_sense_is_named_with_its_place() throws IOException {
        Run run = papers(jobWithChange("rise-at-most", "42 degrees"));
        assertRefused(run, ExitCode.NOT_UNDERSTOOD, "the limit of rise-at-most is a length, not an angle");
        assertThat(run.err()).containsPattern("town\\.yaml:[0-9]+:[0-9]+: ");
    }

    @Test
    void the_advice_for_a_rule_without_a_limit_can_be_followed_to_the_letter() throws IOException {
        String advice = "limit: not enforced";
        assertRefused(
                papers(jobWithChange("handrail-full-length", "3\"")), ExitCode.NOT_UNDERSTOOD, "`" + advice + "`");
        Path mended = jobWithChange("handrail-full-length", advice.replace("limit: ", ""));
        assertThat(Run.of("show", mended.toString()).out()).contains("it is not enforced here, says the town");
    }

    private Path jobWithChange(String rule, String limit) throws IOException {
        Files.writeString(
                folder.resolve("town.yaml"),
                "based on: IRC 2021\nchanges:\n  - rule: %s\n    limit: %s\n    said by: the town\n"
                        .formatted(rule, limit));
        return job("paper: letter", "paper: letter\nlocal changes: town.yaml");
    }

    @Test
    void a_bomb_of_aliases_is_refused_unexpanded() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(9) + "*a" + (i - 1)));
        }
        Run run = papers(Files.writeString(folder.resolve("bomb.yaml"), bomb));
        assertRefused(run, ExitCode.NOT_UNDERSTOOD, "bomb.yaml:1:5: a0: found `&a0`");
        assertThat(run.err().lines()).hasSize(1);
    }

    /** Lines of junk, almost up to the size that is taken. */
    @Test
    void more_problems_than_anybody_reads_are_counted() throws IOException {
        int lines = 100_000;
        Run run = papers(Files.writeString(folder.resolve("junk.yaml"), "a: 1\n".repeat(lines)));
        assertRefused(run, ExitCode.NOT_UNDERSTOOD, "junk.yaml:2:1: found `a`");
        assertThat(run.err().lines())
                .hasSize(Desk.MOST_TOLD + 1)
                .last()
                .isEqualTo(folder.resolve("junk.yaml") + ": and " + (lines - 1 - Desk.MOST_TOLD) + " more, not shown");
    }

    @Test
    void a_file_of_ten_megabytes_is_refused_by_its_size() throws IOException {
        Path large = folder.resolve("large.yaml");
        Files.write(large, new byte[10_000_000]);
        assertRefused(papers(large), ExitCode.NOT_UNDERSTOOD, "large.yaml");
    }

    @Test
    void text_that_is_not_utf_8_is_refused() throws IOException {
        Path file = Files.write(folder.resolve("latin.yaml"), "job: Stég\n".getBytes(StandardCharsets.ISO_8859_1));
        assertRefused(papers(file), ExitCode.NOT_UNDERSTOOD, "UTF-8");
    }

    @Test
    void an_empty_file_is_told_to_be_empty() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.yaml"));
        assertRefused(papers(empty), ExitCode.NOT_UNDERSTOOD, "empty.yaml:1:1: expected something in the file");
    }

    @Test
    void what_is_missing_is_said() {
        assertRefused(papers(folder.resolve("none.yaml")), ExitCode.NO_ACCESS, "none.yaml", "no such file");
        assertRefused(Run.of("show", folder.toString()), ExitCode.NO_ACCESS, folder.toString());
    }

    @Test
    void an_empty_folder_has_no_jobs() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertRefused(papers(empty), ExitCode.NOT_UNDERSTOOD, "no job file in this folder");
    }

    /** The folder itself is a file, or it would have to be made inside one. */
    @ParameterizedTest
    @ValueSource(strings = {"in-the-way", "in-the-way/papers"})
    void a_file_in_the_way_of_the_folder_stays(String to) throws IOException {
        Path file = Files.writeString(folder.resolve("in-the-way"), "mine");
        Run run = Run.of(
                "papers",
                Run.example("boathouse-loft").toString(),
                "--to",
                folder.resolve(to).toString());
        assertRefused(run, ExitCode.NO_ACCESS, "in-the-way");
        assertThat(file).hasContent("mine");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void a_folder_where_the_pdf_should_be_stays() throws IOException {
        Path papers = Files.createDirectories(folder.resolve("out/boathouse-loft.pdf"));
        Run run = Run.of(
                "papers",
                Run.example("boathouse-loft").toString(),
                "--to",
                papers.getParent().toString());
        assertThat(run.code()).isEqualTo(ExitCode.NO_ACCESS);
        assertThat(run.err()).contains("a folder of this name is in the way");
        try (Stream<Path> left = Files.walk(papers.getParent())) {
            assertThat(left).containsExactly(papers.getParent(), papers);
        }
    }

    @Test
    void a_wrong_command_is_not_understood() {
        for (List<String> wrong : List.of(
                List.of("paper"), List.of("papers"), List.of("show", "a", "b"), List.of("show", "--yaml", "a"))) {
            Run run = Run.of(wrong.toArray(String[]::new));
            assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
            assertThat(run.err()).contains("--help").doesNotContain("Exception");
        }
    }
}
