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
}
