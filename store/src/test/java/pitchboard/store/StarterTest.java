package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StarterTest {
    @TempDir
    Path folder;

    @Test
    void a_new_job_is_complete_as_it_stands() throws Exception {
        Path file = Files.writeString(folder.resolve("new.yaml"), Starter.text());
        assertThat(JobFiles.open(file, List.of("IRC 2021"))).isInstanceOf(JobFile.Understood.class);
    }

    @Test
    void every_line_of_it_explains_itself() {
        assertThat(Starter.text().lines().filter(line -> line.contains("#")).count())
                .isGreaterThan(30);
    }
}
