package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.app.Jobs;
import pitchboard.app.OpenedJob;
import pitchboard.job.Job;
import pitchboard.job.Pipeline;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.inspection.SheetInspection;
import pitchboard.site.Overhead;
import pitchboard.store.FileTrouble;

/** No text of any sheet lies on another or leaves the border: all examples, both papers. */
final class SheetsLookTest {
    private static final List<Pen> PENS = List.of(Pen.CUT, Pen.OUTLINE, Pen.DIMENSION);

    @TempDir
    Path folder;

    static Stream<Arguments> examplesOnBothPapers() throws IOException {
        return Run.examples().stream()
                .flatMap(example -> Stream.of("letter", "A4").map(paper -> Arguments.of(example, paper)));
    }

    @ParameterizedTest
    @MethodSource("examplesOnBothPapers")
    void no_text_overlaps_another_or_leaves_the_border(Path example, String paper) throws IOException, FileTrouble {
        assertThat(complaints(on(example, paper))).isEmpty();
    }

    /** Elevation and plan: a line through one of these words makes it hard to read on site. */
    @ParameterizedTest
    @MethodSource("examplesOnBothPapers")
    void no_edge_and_no_dimension_runs_through_the_name_of_a_wall_or_of_what_is_overhead(Path example, String paper)
            throws IOException, FileTrouble {
        Job job = job(on(example, paper));
        List<String> names = Stream.concat(
                        job.site().overheads().stream().map(Overhead::name),
                        Stream.of("climber's left: wall", "climber's right: wall"))
                .map(name -> "\"" + name + "\"")
                .toList();
        assertThat(sheets(job).flatMap(sheet -> SheetInspection.crossedTexts(sheet, PENS).stream()))
                .noneMatch(complaint -> names.stream().anyMatch(complaint::contains));
    }

    private Path on(Path example, String paper) throws IOException {
        Path changes = Run.ROOT.resolve("examples/local/county-changes.yaml");
        Files.createDirectories(folder.resolve("local"));
        Files.copy(changes, folder.resolve("local/county-changes.yaml"));
        String text = Files.readString(example).replaceFirst("(?m)^paper: .*$", "paper: " + paper);
        return Files.writeString(folder.resolve(example.getFileName()), text);
    }

    private static List<String> complaints(Path file) throws FileTrouble {
        return sheets(job(file))
                .flatMap(sheet -> SheetInspection.complaints(sheet).stream())
                .toList();
    }

    private static Job job(Path file) throws FileTrouble {
        return ((OpenedJob.Understood) Jobs.open(file)).job();
    }

    /** No sheets where no stair fits. */
    private static Stream<Sheet> sheets(Job job) {
        return Pipeline.solve(job).match(designed -> Pipeline.sheets(designed).stream(), none -> Stream.empty());
    }
}
