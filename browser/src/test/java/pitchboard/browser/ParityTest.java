package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The browser answers as the desk does, letter for letter, in everything the engine is compiled to. */
@Tag("in-the-browser")
final class ParityTest {
    private static final int RANDOM_JOBS = 1000;
    private static final int AT_ONCE = 40;

    private static Served served;
    private static Chromium chromium;

    @BeforeAll
    static void start() throws Exception {
        Assumptions.assumeTrue(
                Chromium.missing().isEmpty(), () -> Chromium.missing().orElse(""));
        served = Served.folder(Path.of("target/classes/web").toAbsolutePath());
        chromium = Chromium.start();
    }

    @AfterAll
    static void stop() {
        if (chromium != null) {
            chromium.close();
            served.close();
        }
    }

    @ParameterizedTest
    @EnumSource
    void every_example_with_all_its_sheets(Target target) {
        compare(target, Requests.exampleFiles().stream().map(file -> Requests.example(file, "all")), 1);
    }

    @ParameterizedTest
    @EnumSource
    void every_other_request_about_every_example(Target target) {
        compare(target, Requests.others().stream(), 1);
    }

    @ParameterizedTest
    @EnumSource
    void a_thousand_random_jobs(Target target) {
        List<String> requests = new ArrayList<>();
        int solved = 0;
        for (String request : (Iterable<String>) Requests.random()::iterator) {
            requests.add(request);
            solved += Answers.to(request).startsWith("{\"outcome\"") ? 1 : 0;
            if (solved == RANDOM_JOBS) {
                break;
            }
        }
        compare(target, requests.stream(), AT_ONCE);
    }

    private static void compare(Target target, Stream<String> requests, int atOnce) {
        chromium.open(served.address());
        chromium.run("window.run = " + target.entry());
        List<String> all = requests.toList();
        for (int i = 0; i < all.size(); i += atOnce) {
            List<String> some = all.subList(i, Math.min(all.size(), i + atOnce));
            assertThat(chromium.run("return given[0].map(window.run)", some))
                    .isEqualTo(some.stream().map(Answers::to).toList());
        }
    }
}
