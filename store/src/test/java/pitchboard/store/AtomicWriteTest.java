package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
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

    @Test
    void a_fault_while_writing_leaves_nothing_either() throws IOException {
        Path file = folder.resolve("loft.pdf");
        assertThatThrownBy(() -> AtomicWrite.made(file, out -> {
                    throw new IllegalStateException("no such glyph");
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_folder_that_is_missing_or_in_the_way_is_told() throws IOException {
        assertThatThrownBy(() -> AtomicWrite.text(folder.resolve("none/a.yaml"), "a"))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("a.yaml: there is no such file or folder");
        Path inTheWay = Files.createDirectory(folder.resolve("a.yaml"));
        assertThatThrownBy(() -> AtomicWrite.text(inTheWay, "a"))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("a folder of this name is in the way");
        Path file = Files.writeString(folder.resolve("file"), "mine");
        assertThatThrownBy(() -> AtomicWrite.folder(file)).isInstanceOf(FileTrouble.class);
        assertThatThrownBy(() -> AtomicWrite.folder(file.resolve("below"))).isInstanceOf(FileTrouble.class);
    }

    /** Not even root may put a file there. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_folder_without_permission_is_told() {
        assertThatThrownBy(() -> AtomicWrite.text(Path.of("/sys/pitchboard.yaml"), "a"))
                .isInstanceOf(FileTrouble.class)
                .hasMessageStartingWith("/sys/pitchboard.yaml: ");
    }

    @Test
    void a_link_stays_a_link_and_what_it_points_to_is_written() throws IOException, FileTrouble {
        Path file = Files.writeString(folder.resolve("real.yaml"), "before");
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
        AtomicWrite.text(link, "after");
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("after");
    }
}
