package pitchboard.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class MainTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    @Test
    void a_trial_starts_answers_and_stops() {
        assertThat(run("--trial", "--data", folder.resolve("data").toString())).isZero();
        assertThat(folder.resolve("data/jobs.db")).isRegularFile();
    }

    @Test
    void the_help_names_what_can_be_said() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("--port", "4680", "--data", "--share", "--no-browser")
                .doesNotContain("--trial");
    }

    @Test
    void a_port_that_is_none_is_refused() {
        assertThat(run("--port", "0")).isEqualTo(2);
        assertThat(run("--port", "65536")).isEqualTo(2);
        assertThat(run("--port", "x")).isEqualTo(2);
        assertThat(err.toString()).contains("--port", "See: ./pitchboard open --help");
    }

    @Test
    void a_folder_that_cannot_be_made_is_named() throws Exception {
        Path file = Files.createFile(folder.resolve("file"));
        assertThat(run("--trial", "--data", file.toString())).isEqualTo(3);
        assertThat(err.toString()).contains(file.toString(), "this is a file, not a folder");
    }

    @Test
    void a_file_that_is_no_library_is_left_alone() throws Exception {
        Path file = Files.writeString(folder.resolve("jobs.db"), "not a database, but long enough to be looked at");
        assertThat(run("--trial", "--data", folder.toString())).isEqualTo(3);
        assertThat(err.toString()).contains("jobs.db");
        assertThat(file).hasContent("not a database, but long enough to be looked at");
    }

    @Test
    void a_port_that_is_taken_is_passed_over() throws Exception {
        try (ServerSocket taken = new ServerSocket()) {
            taken.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
            int port = taken.getLocalPort();
            assertThat(Ports.firstFree(port, false)).isNotEqualTo(port).isGreaterThan(port);
        }
    }
}
