package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.json.Json;

/** What comes back for a job is what was asked for. */
final class SolvingTest {
    private static final Path EXAMPLE = Requests.exampleFiles().get(0);

    private static Map<String, Object> answer(String request) {
        return new Json().toType(Answers.to(request), Json.MAP_TYPE);
    }

    private static List<?> sheets(String... wanted) {
        return (List<?>) answer(Requests.example(EXAMPLE, wanted)).get("sheets");
    }

    private static Object id(Object sheet) {
        return ((Map<?, ?>) sheet).get("id");
    }

    @Test
    void the_sheets_asked_for_come_as_they_are_in_the_whole_set() {
        List<String> wanted = List.of("rules", "elevation");
        assertThat(sheets("rules", "elevation"))
                .isEqualTo(sheets("all").stream()
                        .filter(sheet -> wanted.contains(id(sheet)))
                        .toList())
                .hasSize(2);
    }

    @Test
    void no_sheet_comes_unasked() {
        assertThat(sheets()).isEmpty();
    }

    @Test
    void every_stair_that_was_tried_comes_when_it_is_asked_for() {
        String request = Requests.example(EXAMPLE);
        assertThat(answer(request).get("dots")).isEqualTo(List.of());

        Map<String, Object> answer = answer(request.replaceFirst("\\{", "{\"dots\": \"yes\","));
        List<Map<?, ?>> dots = dots(answer);
        Map<?, ?> stair = (Map<?, ?>) ((Map<?, ?>) answer.get("outcome")).get("stair");
        assertThat(dots)
                .filteredOn(dot -> (boolean) dot.get("chosen"))
                .singleElement()
                .isEqualTo(Map.of(
                        "risers",
                        stair.get("risers"),
                        "run",
                        stair.get("run"),
                        "rise",
                        stair.get("rise"),
                        "allowed",
                        true,
                        "fits",
                        true,
                        "comfortable",
                        true,
                        "chosen",
                        true));
        Map<?, ?> choices = (Map<?, ?>) ((Map<?, ?>) answer.get("outcome")).get("choices");
        assertThat(dots)
                .filteredOn(dot -> (boolean) dot.get("allowed") && (boolean) dot.get("fits"))
                .hasSameSizeAs((List<?>) choices.get("allowed"));
        assertThat(dots).filteredOn(dot -> !(boolean) dot.get("comfortable")).isNotEmpty();
    }

    private static List<Map<?, ?>> dots(Map<String, Object> answer) {
        return ((List<?>) answer.get("dots"))
                .stream().<Map<?, ?>>map(dot -> (Map<?, ?>) dot).toList();
    }
}
