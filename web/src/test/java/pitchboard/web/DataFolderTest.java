package pitchboard.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class DataFolderTest {
    private static Path of(String system, Map<String, String> variables) {
        return DataFolder.of(system, "/home/mira", variables::get);
    }

    @Test
    void each_system_has_its_place() {
        assertThat(of("Linux", Map.of())).isEqualTo(Path.of("/home/mira/.local/share/pitchboard"));
        assertThat(of("Linux", Map.of("XDG_DATA_HOME", "/data"))).isEqualTo(Path.of("/data/pitchboard"));
        assertThat(of("Linux", Map.of("XDG_DATA_HOME", "relative")))
                .isEqualTo(Path.of("/home/mira/.local/share/pitchboard"));
        assertThat(of("Mac OS X", Map.of("XDG_DATA_HOME", "/data")))
                .isEqualTo(Path.of("/home/mira/Library/Application Support/Pitchboard"));
        assertThat(of("Windows 11", Map.of("APPDATA", "/roaming"))).isEqualTo(Path.of("/roaming/Pitchboard"));
        assertThat(of("WINDOWS 11", Map.of())).isEqualTo(Path.of("/home/mira/AppData/Roaming/Pitchboard"));
    }
}
