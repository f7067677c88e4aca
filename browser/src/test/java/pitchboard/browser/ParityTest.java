package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The browser answers as the desk does, letter for letter, in everything the engine is compiled to. Every target has a
 * browser of its own, and they work side by side.
 */
@Tag("in-the-browser")
final class ParityTest {
    private static final int RANDOM_JOBS = Integer.getInteger("pitchboard.parity", 1000);
    private static final int AT_ONCE = 40;

    private static final List<Running> RUNNING = new ArrayList<>();
    private static final ExecutorService SIDE_BY_SIDE = Executors.newFixedThreadPool(Target.values().length);

    private static Served served;

    /** A target in its browser. */
    private record Running(Target target, Chromium chromium) {}

    @BeforeAll
    static void start() throws Exception {
        Assumptions.assumeTrue(
                Chromium.missing().isEmpty(), () -> Chromium.missing().orElse(""));
        served = Served.folder(Path.of("target/classes/web").toAbsolutePath());
        for (Target target : Target.values()) {
            Chromium chromium = Chromium.start();
            RUNNING.add(new Running(target, chromium));
            chromium.open(served.address());
            chromium.run("window.run = " + target.entry());
        }
    }

    @AfterAll
    static void stop() {
        SIDE_BY_SIDE.shutdownNow();
        RUNNING.forEach(running -> running.chromium().close());
        if (served != null) {
            served.close();
        }
    }

    @Test
    void every_example_with_all_its_sheets() throws Exception {
        compare(Requests.exampleFiles().stream()
                .map(file -> Requests.example(file, "all"))
                .toList());
    }

    @Test
    void every_other_request_about_every_example() throws Exception {
        compare(Requests.others());
    }

    @Test
    void a_thousand_random_jobs() throws Exception {
        Iterator<String> random = Requests.random().iterator();
        long solved = 0;
        while (solved < RANDOM_JOBS) {
            List<String> answers = compare(
                    IntStream.range(0, AT_ONCE).mapToObj(i -> random.next()).toList());
            solved += answers.stream()
                    .filter(answer -> answer.startsWith("{\"outcome\""))
                    .count();
        }
    }

    /** @return what the desk answers, once every target has answered so, too */
    private static List<String> compare(List<String> requests) throws Exception {
        List<String> answers = requests.parallelStream().map(Answers::to).toList();
        List<Callable<Void>> work = new ArrayList<>();
        for (Running running : RUNNING) {
            work.add(() -> {
                compare(running, requests, answers);
                return null;
            });
        }
        for (Future<Void> done : SIDE_BY_SIDE.invokeAll(work)) {
            done.get();
        }
        return answers;
    }

    /** Most of the time would go into carrying answers out of the browser, so that only their digests are carried. */
    private static void compare(Running running, List<String> requests, List<String> answers) throws Exception {
        Object digests = running.chromium().run("""
                const digest = text => crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
                const hex = bytes => [...new Uint8Array(bytes)].map(b => b.toString(16).padStart(2, '0')).join('');
                return (await Promise.all(given[0].map(window.run).map(digest))).map(hex);
                """, requests);
        assertThat(digests).as(running.target().name()).isInstanceOf(List.class);
        assertThat((List<?>) digests).hasSameSizeAs(requests);
        for (int i = 0; i < requests.size(); i++) {
            if (!((List<?>) digests).get(i).equals(digest(answers.get(i)))) {
                assertThat(running.chromium().run("return window.run(given[0])", requests.get(i)))
                        .as(running.target() + ", asked " + requests.get(i))
                        .isEqualTo(answers.get(i));
                throw new AssertionError("answers twice in two ways: " + requests.get(i));
            }
        }
    }

    private static String digest(String text) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    }
}
