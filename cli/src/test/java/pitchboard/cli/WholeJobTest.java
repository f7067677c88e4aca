package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** From a job file to papers, as a user types it. */
final class WholeJobTest {
    @TempDir
    Path folder;

    static List<Path> examples() throws IOException {
        return Run.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_is_answered_on_the_result_stream_alone(Path example) {
        for (String command : List.of("choices", "show")) {
            Run run = Run.of(command, example.toString());
            assertThat(run.err()).isEmpty();
            assertThat(run.out()).isNotEmpty();
            assertThat(run.code()).isBetween(ExitCode.DONE, ExitCode.FAILING);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_is_the_same_json_each_time(Path example) {
        Run once = Run.of("show", "--json", example.toString());
        assertThat(once.err()).isEmpty();
        assertThat(once).isEqualTo(Run.of("show", "--json", example.toString()));
        assertThat(JsonShape.complaint(once.out())).isEmpty();
    }

    @Test
    void a_folder_of_jobs_is_done_in_one_run_with_progress() throws IOException {
        Run run = Run.of("papers", Run.ROOT.resolve("examples").toString(), "--to", folder.toString());
        int count = Run.examples().size();
        assertThat(run.err().lines()).hasSize(count);
        assertThat(run.err()).contains("1 of " + count + "  ").contains(count + " of " + count + "  ");
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        List<String> pdfs = run.out().lines().toList();
        assertThat(pdfs).allSatisfy(pdf -> assertThat(Path.of(pdf)).isNotEmptyFile());
        assertThat(pdfs).hasSize(count - 1);
        assertThat(leftovers()).isEmpty();
    }

    private List<Path> leftovers() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.getFileName().toString().endsWith(".part"))
                    .toList();
        }
    }

    @Test
    void the_papers_of_one_job_are_a_pdf_and_every_sheet_as_a_drawing() throws IOException {
        Run run = Run.of("papers", Run.example("boathouse-loft").toString(), "--to", folder.toString());
        assertThat(run)
                .isEqualTo(new Run(
                        ExitCode.DONE, folder.resolve("boathouse-loft.pdf") + "\n", "boathouse-loft: 31 sheets\n"));
        try (Stream<Path> drawings = Files.list(folder.resolve("boathouse-loft-sheets"))) {
            assertThat(drawings.map(path -> path.getFileName().toString()).sorted())
                    .hasSize(31)
                    .startsWith("01-elevation.svg", "02-plan.svg", "03-stringer.svg");
        }
    }

    @Test
    void the_same_job_gives_the_same_bytes() throws IOException {
        Path other = folder.resolve("again");
        for (Path to : List.of(folder, other)) {
            Run.of("papers", Run.example("boathouse-loft").toString(), "--to", to.toString());
        }
        assertThat(folder.resolve("boathouse-loft.pdf")).hasSameBinaryContentAs(other.resolve("boathouse-loft.pdf"));
        assertThat(Files.readString(folder.resolve("boathouse-loft-parts.csv")))
                .contains("mark,pieces,name,thickness in,width in,length in,what it is for\r\n")
                .contains("T,26,tread board,1.5,5.5,40,2 side by side for each step\r\n");
        assertThat(folder.resolve("boathouse-loft-sheets/01-elevation.svg"))
                .hasSameBinaryContentAs(other.resolve("boathouse-loft-sheets/01-elevation.svg"));
    }

    @Test
    void a_started_job_is_complete_and_is_not_written_over() {
        String file = folder.resolve("mine.yaml").toString();
        assertThat(Run.of("start", file).code()).isEqualTo(ExitCode.DONE);
        assertThat(Run.of("choices", file).code()).isEqualTo(ExitCode.DONE);
        Run again = Run.of("start", file);
        assertThat(again.code()).isEqualTo(ExitCode.NO_ACCESS);
        assertThat(again.err()).contains("is there already");
    }

    /** 105 in over 12 risers is 8 3/4 in: common practice, no source; over the limit of IRC 2021 R311.7.5.1. */
    @Test
    void a_fixed_number_that_fails_is_drawn_and_what_would_pass_is_said() {
        Run show = Run.of("show", Run.example("twelve-risers-fixed").toString());
        assertThat(show.code()).isEqualTo(ExitCode.FAILING);
        assertThat(unwrapped(show))
                .contains("rise of a step: 8 3/4\"", "at most 7 3/4\"", "1\" too much", "use 14 risers")
                .contains("What was asked for is not allowed");
    }

    @Test
    void no_stair_is_an_answer_with_reasons() {
        Run choices = Run.of("choices", Run.example("crane-loft-cannot-be").toString());
        assertThat(choices.code()).isEqualTo(ExitCode.FAILING);
        assertThat(choices.out())
                .contains("No stair fits, under IRC 2021 and in the space there is")
                .contains("Near misses, and what would make each fit")
                .contains("level space taken", "headroom");
    }

    @Test
    void local_changes_make_the_difference_and_are_named() {
        Run show = Run.of("show", Run.example("sail-store-local").toString());
        assertThat(show.code()).isEqualTo(ExitCode.DONE);
        assertThat(unwrapped(show)).contains("Heron County building office, order 12", "the book has at most 7 3/4\"");
    }

    @Test
    void an_estimated_rise_passes_nothing() {
        String out = Run.of("show", Run.example("estimated-rise").toString()).out();
        assertThat(out)
                .contains("?     rise of a step: cannot tell: measure the rise")
                .doesNotContain("pass  rise of a step");
    }

    private static String unwrapped(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }
}
