package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page about the engine in the browser shows is what the engine answers. */
final class BrowserPageTest {
    private static final Pattern BLOCK = Pattern.compile("```json\n(.*?)\n```", Pattern.DOTALL);

    /** A request, and the answer as the page shows it. */
    record Example(String request, String answer) {
        /** The pieces between what is left out. */
        List<String> pieces() {
            // A line is broken where the answer has no blank.
            return List.of(answer.replace("\n ", "").split("…", -1));
        }
    }

    private static String page() throws IOException {
        return Files.readString(Requests.root().resolve("docs/browser.md"));
    }

    static Stream<Example> examples() throws IOException {
        List<String> blocks =
                BLOCK.matcher(page()).results().map(found -> found.group(1)).toList();
        assertThat(blocks).hasSizeGreaterThan(10);
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i += 2) {
            examples.add(new Example(blocks.get(i), blocks.get(i + 1)));
        }
        return examples.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_is_answered_as_the_page_shows_it(Example example) {
        String answer = Answers.to(example.request());
        List<String> pieces = example.pieces();
        assertThat(answer).startsWith(pieces.get(0)).endsWith(pieces.get(pieces.size() - 1));
        assertThat(answer).containsSubsequence(pieces);
        if (pieces.size() == 1) {
            assertThat(answer).isEqualTo(pieces.get(0));
        }
    }

    @Test
    void everything_that_can_be_asked_for_has_its_part_and_an_example() throws IOException {
        String page = page();
        List<String> parts = Pattern.compile("\n## (\\w+): ")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(parts).isEqualTo(Answers.TASKS.stream().map(Task::name).toList());
        List<String> asked = Pattern.compile("\\{\"do\": \"(\\w+)\"")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(asked).containsAll(parts);
    }

    @Test
    void every_line_of_a_request_is_named() throws IOException {
        String page = page();
        for (Task task : Answers.TASKS) {
            assertThat(task.keys())
                    .as(task.name())
                    .allMatch(key -> page.contains("`" + key + "`") || page.contains("\"" + key + "\": "));
        }
    }
}
