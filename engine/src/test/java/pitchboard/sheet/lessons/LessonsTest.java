package pitchboard.sheet.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.intake.JobText;
import pitchboard.intake.KeyLine;
import pitchboard.sheet.inspection.SheetInspection;

/** The small pictures, each on its page and at a line there is. */
final class LessonsTest {
    private static final List<String> OF_GUARDS = List.of(
            "wanted > guard > posts > fixing",
            "wanted > guard > posts > top",
            "wanted > guard > posts > behind nosing",
            "wanted > guard > posts > greatest spacing",
            "wanted > guard > bottom rail > above nosings",
            "wanted > guard > infill > kind",
            "wanted > guard > infill > ball");

    @Test
    void nothing_of_a_lesson_leaves_its_page() {
        assertThat(Lessons.all().stream().flatMap(lesson -> SheetInspection.complaints(lesson.picture()).stream()))
                .isEmpty();
    }

    @Test
    void what_is_measured_or_chosen_about_a_guard_has_lessons() {
        assertThat(Lessons.all()).extracting(Lesson::field).containsAll(OF_GUARDS);
    }

    @Test
    void every_lesson_of_a_guard_is_at_a_line_of_the_job_file() {
        Stream<String> lines = JobText.keys(List.of("a book")).stream().map(KeyLine::path);
        assertThat(lines).containsAll(OF_GUARDS);
    }
}
