package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.intake.form.Shape;

/** The job file's form as a tree of things to ask for. */
final class QuestionsTest {
    private static final List<Question> ALL = flat(JobText.questions(List.of("IRC 2021", "IRC 2018")));

    private static List<Question> flat(List<Question> questions) {
        List<Question> all = new ArrayList<>();
        for (Question question : questions) {
            all.add(question);
            all.addAll(flat(question.lines()));
        }
        return all;
    }

    @Test
    void it_asks_for_every_line_in_the_order_of_the_file() {
        assertThat(ALL).extracting(Question::line).isEqualTo(JobText.keys(List.of("IRC 2021", "IRC 2018")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            rulebook                        | choice     | IRC 2021, IRC 2018        | -         | -      | true
            mark to                         | graduation | 1/8", 1/16", 1/32", 1/64", 1 mm, 0.5 mm, 0.1 mm | - | - | false
            measured                        | group      | -                         | -         | -      | true
            measured > rise                 | group      | -                         | -         | length | false
            measured > rise > length        | length     | -                         | -         | -      | true
            measured > finish to come above | length     | -                         | none      | -      | true
            measured > run available        | group      | -                         | free      | length | true
            measured > overhead             | list       | -                         | nothing   | -      | false
            measured > overhead > from      | length     | -                         | -         | -      | true
            measured > landing above > fall | slope      | -                         | -         | -      | false
            measured > light                | choice     | yes, no                   | -         | -      | false
            wanted > risers                 | group      | -                         | -         | kind   | true
            wanted > stringers > count      | count      | -                         | -         | -      | true
            wanted > stringers > stock      | words      | -                         | -         | -      | true
            wanted > steps > run            | length     | -                         | free      | -      | false
            """)
    void it_says_how_each_is_asked_for(
            String field, String kind, String choices, String instead, String lead, boolean needed) {
        Question question = ALL.stream()
                .filter(each -> each.line().path().equals(field))
                .findFirst()
                .orElseThrow();
        Shape shape = question.shape();
        assertThat(shape.kind().words()).isEqualTo(kind);
        assertThat(shape.choices()).isEqualTo(split(choices));
        assertThat(shape.instead()).isEqualTo(split(instead));
        assertThat(shape.lead().stream().toList()).isEqualTo(split(lead));
        assertThat(question.needed()).isEqualTo(needed);
        assertThat(question.name())
                .isEqualTo(field.substring(field.lastIndexOf('>') + 1).strip());
    }

    private static List<String> split(String words) {
        return words == null ? List.of() : List.of(words.split(", ", -1));
    }

    @Test
    void every_group_and_list_has_lines_and_nothing_else_has() {
        List<Question> nested = ALL.stream()
                .filter(each ->
                        each.shape().kind() == Shape.Kind.GROUP || each.shape().kind() == Shape.Kind.LIST)
                .toList();
        assertThat(nested).allMatch(each -> !each.lines().isEmpty());
        assertThat(ALL.stream().filter(each -> !nested.contains(each)))
                .allMatch(each -> each.lines().isEmpty());
    }

    @Test
    void the_lead_of_a_group_is_one_of_its_lines() {
        assertThat(ALL)
                .allMatch(each -> each.shape()
                        .lead()
                        .map(lead -> names(each).contains(lead))
                        .orElse(true));
    }

    private static List<String> names(Question question) {
        return question.lines().stream().map(Question::name).toList();
    }
}
