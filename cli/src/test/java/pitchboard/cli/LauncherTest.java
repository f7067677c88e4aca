package pitchboard.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher script, with a Maven and a Java that only say how they were called. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher is a bash script")
final class LauncherTest {
    @TempDir
    Path folder;

    private Path root;
    private Path tools;

    record Run(int exitCode, List<String> out, String err) {
        /** The arguments after the name of the main class. */
        List<String> handedOn() {
            return handedOnTo("cli");
        }

        List<String> handedOnTo(String face) {
            return out.subList(out.indexOf("<pitchboard." + face + ".Main>") + 1, out.size());
        }
    }

    @BeforeEach
    void lay_out_a_project_with_a_space_in_its_path() throws IOException {
        root = Files.createDirectories(folder.resolve("a stair"));
        tools = Files.createDirectories(folder.resolve("jdk/bin"));
        Path real = Path.of("").toAbsolutePath().getParent();
        Files.copy(real.resolve("pitchboard"), root.resolve("pitchboard"));
        for (String tool : List.of("mvn", "java")) {
            Path script = tools.resolve(tool);
            Files.copy(Path.of("src/test/resources/launcher", tool), script);
            assertThat(script.toFile().setExecutable(true)).isTrue();
        }
        write("pom.xml", "");
        for (String module : List.of("engine", "documents", "store", "app", "cli", "browser", "web")) {
            write(module + "/pom.xml", "");
            write(module + "/src/main/java/A.java", "");
        }
    }

    @Test
    void arguments_and_exit_code_go_through_unchanged() throws Exception {
        Run run = run("papers", "a b", "", "*", "-Dx=\"y\"", "exit7");
        assertThat(run.exitCode()).isEqualTo(7);
        assertThat(run.handedOn()).containsExactly("<papers>", "<a b>", "<>", "<*>", "<-Dx=\"y\">", "<exit7>");
    }

    @Test
    void the_first_run_builds_and_says_so_on_stderr_and_the_second_does_not() throws Exception {
        assertThat(run("x").err()).hasLineCount(1).contains("building");
        assertThat(run("x").err()).isEmpty();
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void a_saved_source_or_pom_builds_again() throws Exception {
        run("x");
        save("engine/src/main/java/A.java");
        assertThat(run("x").err()).contains("building again");
        save("store/pom.xml");
        assertThat(run("x").err()).contains("building again");
        assertThat(run("x").err()).isEmpty();
        assertThat(builds()).isEqualTo(3);
    }

    @Test
    void a_source_taken_away_builds_again() throws Exception {
        run("x");
        Files.delete(root.resolve("engine/src/main/java/A.java"));
        save("engine/src/main/java");
        run("x");
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void runs_started_together_build_once_and_all_work() throws Exception {
        write("slow", ".5");
        List<Process> together = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            together.add(start(Map.of(), root.resolve("pitchboard"), "exit5"));
        }
        for (Process each : together) {
            assertThat(finish(each).exitCode()).isEqualTo(5);
        }
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void the_class_path_is_the_jars_of_the_build_and_the_archive_is_used() throws Exception {
        Run run = run("x");
        String classPath = run.out().get(run.out().indexOf("<-cp>") + 1);
        assertThat(classPath).contains("/pitchboard-cli-1.jar:").contains("/pitchboard-engine-1.jar>");
        assertThat(run.out())
                .contains("<-XX:+UseSerialGC>", "<-XX:TieredStopAtLevel=1>", "<-Xshare:auto>")
                .anyMatch(argument -> argument.startsWith("<-XX:SharedArchiveFile="));
    }

    @Test
    void the_page_is_a_program_of_its_own_that_the_other_never_builds() throws Exception {
        Run page = run("open", "--port", "5000", "exit6");
        assertThat(page.exitCode()).isEqualTo(6);
        assertThat(page.err()).hasLineCount(1).contains("building");
        assertThat(page.handedOnTo("web")).containsExactly("<--port>", "<5000>", "<exit6>");
        assertThat(page.out()).anyMatch(argument -> argument.contains("/pitchboard-web-1.jar"));
        save("browser/src/main/java/A.java");
        assertThat(run("x").err()).contains("building (only this once");
        save("web/pom.xml");
        assertThat(run("x").err()).isEmpty();
        assertThat(run("open").err()).contains("building again");
        assertThat(builds()).isEqualTo(3);
    }

    @Test
    void it_is_found_through_links_from_any_folder() throws Exception {
        Path inner = Files.createSymbolicLink(folder.resolve("inner"), root.resolve("pitchboard"));
        Path outer = Files.createSymbolicLink(folder.resolve("outer"), inner.getFileName());
        Run run = finish(start(Map.of(), outer, "exit3"));
        assertThat(run.exitCode()).isEqualTo(3);
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void more_options_for_java_are_split_at_spaces() throws Exception {
        Run run = finish(start(Map.of("PITCHBOARD_JAVA_OPTS", "-Xmx99m -Dx=*"), root.resolve("pitchboard"), "x"));
        assertThat(run.out()).containsSequence("<-Xmx99m>", "<-Dx=*>", "<-cp>");
    }

    @Test
    void a_build_that_fails_shows_the_error_and_is_tried_again() throws Exception {
        write("fail", "");
        Run failed = run("x");
        assertThat(failed.exitCode()).isEqualTo(3);
        assertThat(failed.err()).contains("no such thing").contains("the build failed");
        assertThat(failed.out()).isEmpty();
        Files.delete(root.resolve("fail"));
        assertThat(run("exit0").exitCode()).isZero();
    }

    @Test
    void an_older_java_is_refused() throws Exception {
        Run run = finish(start(Map.of("FAKE_JAVA", "11.0.2"), root.resolve("pitchboard"), "x"));
        assertThat(run.exitCode()).isEqualTo(3);
        assertThat(run.err()).contains("is Java 11; Java 17 or newer is needed");
        Run ancient = finish(start(Map.of("FAKE_JAVA", "1.8.0_292"), root.resolve("pitchboard"), "x"));
        assertThat(ancient.err()).contains("is Java 8;");
    }

    @Test
    void a_wrong_java_home_is_named() throws Exception {
        Run run = finish(start(Map.of("JAVA_HOME", "/no such"), root.resolve("pitchboard"), "x"));
        assertThat(run.exitCode()).isEqualTo(3);
        assertThat(run.err()).contains("JAVA_HOME is /no such");
    }

    @Test
    void a_missing_maven_is_named_only_when_there_is_something_to_build() throws Exception {
        Path bare = toolsWithout("mvn");
        Run run = finish(start(Map.of("PATH", bare.toString()), root.resolve("pitchboard"), "x"));
        assertThat(run.exitCode()).isEqualTo(3);
        assertThat(run.err()).contains("no mvn on the PATH");
        run("x");
        assertThat(finish(start(Map.of("PATH", bare.toString()), root.resolve("pitchboard"), "exit4"))
                        .exitCode())
                .isEqualTo(4);
    }

    /** The tools of the system that the launcher itself needs, and nothing else. */
    private Path toolsWithout(String missing) throws IOException {
        Path bare = Files.createDirectory(folder.resolve("bare"));
        for (String tool :
                List.of("bash", "env", "dirname", "readlink", "find", "sed", "head", "mkdir", "flock", "rm")) {
            Stream.of("/usr/bin", "/bin")
                    .map(place -> Path.of(place, tool))
                    .filter(Files::exists)
                    .findFirst()
                    .ifPresent(found -> passOn(bare.resolve(tool), found));
        }
        assertThat(bare.resolve(missing)).doesNotExist();
        return bare;
    }

    private static void passOn(Path script, Path to) {
        try {
            Files.writeString(script, "#!/bin/sh\nexec " + to + " \"$@\"\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(script.toFile().setExecutable(true)).isTrue();
    }

    private Run run(String... arguments) throws Exception {
        return finish(start(Map.of(), root.resolve("pitchboard"), arguments));
    }

    private Process start(Map<String, String> environment, Path launcher, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("/bin/bash", launcher.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        Map<String, String> settings = builder.environment();
        settings.put("PATH", tools + ":" + settings.get("PATH"));
        settings.put("JAVA_HOME", tools.getParent().toString());
        settings.remove("PITCHBOARD_JAVA_OPTS");
        settings.putAll(environment);
        return builder.start();
    }

    /** Both outputs are a few lines, so reading one after the other cannot block. */
    private static Run finish(Process process) throws Exception {
        process.getOutputStream().close();
        List<String> out = new String(process.getInputStream().readAllBytes(), UTF_8)
                .lines()
                .toList();
        String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor(60, SECONDS)).isTrue();
        return new Run(process.exitValue(), out, err);
    }

    private long builds() throws IOException {
        try (Stream<String> lines = Files.lines(root.resolve("builds"))) {
            return lines.count();
        }
    }

    private void write(String name, String text) throws IOException {
        Path file = root.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private void save(String name) throws IOException {
        Files.setLastModifiedTime(root.resolve(name), FileTime.from(Instant.now()));
    }
}
