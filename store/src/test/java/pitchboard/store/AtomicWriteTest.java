package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class AtomicWriteTest {
    @TempDir
    Path folder;

    @Test
    void a_write_that_breaks_off_leaves_what_was_there_and_nothing_else() throws IOException {
        Path file = Files.writeString(folder.resolve("loft.pdf"), "before");
        assertThatThrownBy(() -> AtomicWrite.made(file, out -> {
                    out.write("half".getBytes(StandardCharsets.UTF_8));
                    throw new IOException("the disk is full");
                }))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("the disk is full");
        assertThat(file).hasContent("before");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    @Test
    void a_new_file_is_never_written_over_one_that_is_there() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "mine");
        assertThatThrownBy(() -> AtomicWrite.newText(file, "yours")).isInstanceOf(FileTrouble.class);
        assertThat(file).hasContent("mine");
    }

    @Test
    void written_over_is_written_whole() throws IOException, FileTrouble {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "a much longer text than the next one");
        AtomicWrite.text(file, "short");
        assertThat(file).hasContent("short");
    }
}
