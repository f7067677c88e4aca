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
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            []                                 | ~~    | 1 |  1 | found `a list`, expected a group with "do" and what it needs
            {"do" "solve"}                     | ~~    | 1 |  7 | found `"`, expected a colon after the name `do`
            {"do": "solve"}                    | job   | 1 |  1 | expected a job
            {"do": "solve", "job": {}, "a": 1} | a     | 1 | 29 | found `a`, expected one of do, job, changes, sheets, pictures, dots, elements
            {"do": "solve", "job": {}, "dots": "no"} | dots  | 1 | 37 | found `no`, expected "yes", or no such line
            {"do": "solve", "job": {}, "sheets": 1} | sheets | 1 | 38 | found `1`, expected "all", or a list of the names of sheets
            {"do": "solve", "job": {}, "sheets": [[]]} | sheets | 1 | 38 | found `a list`, expected "all", or a list of the names of sheets
            {"do": "compare", "before": {}, "after": "x"} | after | 1 | 43 | found `x`, expected a job
            {"do": "under", "job": {}, "books": "IBC 2021"} | books | 1 | 38 | found `IBC 2021`, expected a list of the names of rulebooks
            {"do": "write", "job": []}         | job   | 1 | 24 | found `a list`, expected a job
            {"do": "length", "text": "1", "units": "ells"} | units | 1 | 41 | found `ells`, expected inches or millimetres
            {"do": "length", "units": "inches"} | text | 1 |  1 | expected a length as a job file has it
            {"do": "length", "text": "8' 17/16", "units": "inches"} | text | 1 | 4 | found `17/16`, expected a fraction of less than one (write 1 1/16, or put a space after the whole number)
            """)
    void says_what_is_wrong_with_a_request(String request, String field, int line, int column, String words) {
        assertThat(Answers.to(request)).isEqualTo(problem(field, line, column, words));
    }

    @Test
    void names_all_there_is_to_ask_for_when_something_else_is_asked() {
        assertThat(List.of(Answers.to("{\"do\": \"sing\"}"), Answers.to("{\"do\": [] }"), Answers.to("{ }")))
                .containsExactly(
                        problem("do", 1, 9, "found `sing`, expected one of " + NAMES),
                        problem("do", 1, 8, "found `a list`, expected one of " + NAMES),
                        problem("do", 1, 1, "expected one of " + NAMES));
    }

    @Test
    void tells_what_is_missing_in_a_job_from_what_is_wrong() {
        String answer = Answers.to("{\"do\": \"solve\", \"job\": {\"units\": \"ells\"}}");
        assertThat(answer)
                .contains("\"field\":\"units\",\"line\":1,\"column\":35,"
                        + "\"words\":\"found `ells`, expected inches or millimetres\",\"missing\":false")
                .contains("\"field\":\"measured\",\"line\":1,\"column\":1")
                .contains("\"missing\":true");
    }

    @Test
    void every_task_has_a_name_of_its_own() {
        assertThat(Answers.TASKS).extracting(Task::name).doesNotHaveDuplicates();
    }

    private static String problem(String field, int line, int column, String words) {
        return "{\"problems\":[{\"in\":\"request\",\"field\":\"%s\",\"line\":%d,\"column\":%d,\"words\":\"%s\",\"missing\":%s}]}"
                .formatted(field, line, column, words.replace("\"", "\\\""), words.startsWith("expected"));
    }
}
