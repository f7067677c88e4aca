package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;

/** A file is text in UTF-8 and not too long, or there is one clear reason why not. */
final class WrittenFileTest {
    @TempDir
    Path folder;

    @Test
    void the_ending_of_the_name_says_what_it_is() throws IOException, FileTrouble {
        assertThat(problems("a.json", bytes("{\"a\": 1}"))).isEmpty();
        assertThat(problems("a.JSON", bytes("{\"a\": 1}"))).isEmpty();
        assertThat(problems("a.json", bytes("a: 1"))).hasSize(1);
        assertThat(problems("a.yaml", bytes("a: 1"))).isEmpty();
        assertThat(problems("notes", bytes("a: 1"))).isEmpty();
    }

    @Test
    void a_mark_at_the_beginning_does_no_harm() throws IOException, FileTrouble {
        assertThat(problems("a.yaml", bytes("\ufeffa: 1"))).isEmpty();
        assertThat(problems("a.json", bytes("\ufeff{\"a\": 1}"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n", "\ufeff"})
    void an_empty_file_is_said_to_be_empty(String text) throws IOException, FileTrouble {
        assertThat(problems("a.yaml", bytes(text)))
                .containsExactly("line 1, column 1: expected something in the file: it is empty");
    }

    @Test
    void the_byte_that_is_not_utf_8_is_named_with_its_place() throws IOException, FileTrouble {
        byte[] latin = "a: 1\njob: Stég\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(problems("a.yaml", latin))
                .containsExactly("line 2, column 8: expected text saved as UTF-8: byte 13 of the file (0xE9) is not");
        byte[] utf16 = "a: 1".getBytes(StandardCharsets.UTF_16);
        assertThat(problems("a.yaml", utf16))
                .containsExactly("line 1, column 1: expected text saved as UTF-8: byte 1 of the file (0xFE) is not");
    }

    @Test
    void half_a_character_at_the_end_is_refused() throws IOException, FileTrouble {
        ByteArrayOutputStream cut = new ByteArrayOutputStream();
        cut.write(bytes("a: 1"));
        cut.write(0xe2);
        cut.write(0x82);
        assertThat(problems("a.yaml", cut.toByteArray()))
                .containsExactly("line 1, column 5: expected text saved as UTF-8: byte 5 of the file (0xE2) is not");
    }

    @Test
    void a_file_may_be_as_long_as_the_limit_and_no_longer() throws IOException, FileTrouble {
        byte[] most = bytes("a: 1 #" + "x".repeat(WrittenFile.MOST_BYTES - 6));
        byte[] over = bytes("a: 1 #" + "x".repeat(WrittenFile.MOST_BYTES - 5));
        assertThat(problems("a.yaml", most)).isEmpty();
        assertThat(problems("a.yaml", over)).containsExactly("expected a file of at most 1 MiB");
        assertThat(problems("a.yaml", new byte[10_000_000])).containsExactly("expected a file of at most 1 MiB");
    }

    @Test
    void a_file_that_cannot_be_read_is_trouble_of_its_own_kind() throws IOException {
        assertTrouble(folder.resolve("none.yaml"), "there is no such file or folder");
        assertTrouble(folder, "this is a folder, not a file");
        Path file = Files.writeString(folder.resolve("file"), "a: 1");
        assertThatThrownBy(() -> WrittenFile.read(file.resolve("below.yaml"))).isInstanceOf(FileTrouble.class);
    }

    private static void assertTrouble(Path file, String why) {
        assertThatThrownBy(() -> WrittenFile.read(file))
                .isInstanceOfSatisfying(
                        FileTrouble.class, trouble -> assertThat(trouble.path()).isEqualTo(file))
                .hasMessage(file + ": " + why);
    }

    private List<String> problems(String name, byte[] content) throws IOException, FileTrouble {
        Transcript transcript = WrittenFile.read(Files.write(folder.resolve(name), content));
        return transcript.match(
                legible -> List.of(),
                illegible ->
                        illegible.problems().stream().map(Problem::sentence).toList());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
