package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a request itself is said where it is wrong. */
final class AnswersTest {
    private static final String NAMES = Answers.TASKS.stream().map(Task::name).collect(Collectors.joining(", "));

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            []                              |           | 1 |  1 | expected a group with "do" and what it needs
            {"do": "solve"}                 | job       | 1 |  1 | expected a job
            {"do": "solve", "job": {}, "a": 1} | a      | 1 | 33 | expected one of do, job, changes, sheets
            {"do": "solve", "job": {}, "sheets": 1} | sheets | 1 | 38 | expected "all", or a list of the names of sheets
            {"do": "solve", "job": {}, "sheets": [[]]} | sheets | 1 | 38 | expected "all", or a list of the names of sheets
            """)
    void says_what_is_wrong_with_a_request(String request, String field, int line, int column, String words) {
        assertThat(Answers.to(request)).isEqualTo(problem(field == null ? "" : field, line, column, words));
    }

    @Test
    void names_all_there_is_to_ask_for_when_something_else_is_asked() {
        assertThat(List.of(Answers.to("{\"do\": \"sing\"}"), Answers.to("{\"do\": [] }"), Answers.to("{ }")))
                .containsExactly(
                        problem("do", 1, 9, "expected one of " + NAMES),
                        problem("do", 1, 8, "expected one of " + NAMES),
                        problem("do", 1, 1, "expected one of " + NAMES));
    }

    @Test
    void says_where_a_request_is_no_JSON() {
        assertThat(Answers.to("{\"do\" \"solve\"}"))
                .isEqualTo(problem("", 1, 7, "found `\"`, expected a colon after the name `do`"));
    }

    @Test
    void every_task_has_a_name_of_its_own() {
        assertThat(Answers.TASKS).extracting(Task::name).doesNotHaveDuplicates();
    }

    private static String problem(String field, int line, int column, String words) {
        return "{\"problems\":[{\"in\":\"request\",\"field\":\"%s\",\"line\":%d,\"column\":%d,\"words\":\"%s\"}]}"
                .formatted(field, line, column, words.replace("\"", "\\\""));
    }
}
