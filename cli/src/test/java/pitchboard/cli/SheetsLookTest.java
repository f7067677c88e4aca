package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.app.Jobs;
import pitchboard.app.OpenedJob;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.inspection.SheetInspection;
import pitchboard.store.FileTrouble;

/** No text of any sheet lies on another or leaves the border: all examples, both papers. */
final class SheetsLookTest {
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

    private Path on(Path example, String paper) throws IOException {
        Path changes = Run.ROOT.resolve("examples/local/county-changes.yaml");
        Files.createDirectories(folder.resolve("local"));
        Files.copy(changes, folder.resolve("local/county-changes.yaml"));
        String text = Files.readString(example).replaceFirst("(?m)^paper: .*$", "paper: " + paper);
        return Files.writeString(folder.resolve(example.getFileName()), text);
    }

    private static List<String> complaints(Path file) throws FileTrouble {
        OpenedJob.Understood job = (OpenedJob.Understood) Jobs.open(file);
        List<String> complaints = new ArrayList<>();
        if (Pipeline.solve(job.job()) instanceof Outcome.Designed designed) {
            for (Sheet sheet : Pipeline.sheets(designed)) {
                complaints.addAll(SheetInspection.complaints(sheet));
            }
        }
        return complaints;
    }
}
