package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Handrail;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.brief.Section;
import pitchboard.measure.Length;

/** What a job says of the guard it is to build. */
final class GuardFormTest {
    private static final String OLD = "\"guard\": {\"wanted\": \"yes\", \"height\": 36, \"gap\": 4}";
    private static final String POSTS =
            "\"posts\": {\"width\": 3.5, \"thickness\": 3.5, \"greatest spacing\": 60, \"fixing\": \"lapped\"}";
    private static final String RAILS = "\"top rail\": {\"width\": 3.5, \"thickness\": 1.5}, "
            + "\"bottom rail\": {\"width\": 2.5, \"thickness\": 1.5, \"above nosings\": 1}";
    private static final String INFILL =
            "\"infill\": {\"kind\": \"balusters\", \"width\": 1.5, \"thickness\": 1.5, \"ball\": 4}";
    private static final String WHOLE =
            "\"guard\": {\"wanted\": \"yes\", \"height\": 36, " + POSTS + ", " + RAILS + ", " + INFILL + "}";

    private static String job(String guard) {
        return JobJson.with(OLD, guard);
    }

    private static List<String> problems(String old, String changed) {
        assertThat(WHOLE).contains(old);
        return JobJson.problems(job(WHOLE.replace(old, changed)));
    }

    @Test
    void what_it_is_built_of_is_read() {
        Guard guard = JobJson.understood(job(WHOLE)).brief().guard();
        Section thin = new Section(Length.inches(1, 1, 2), Length.inches(1, 1, 2));
        Section post = new Section(Length.inches(3, 1, 2), Length.inches(3, 1, 2));
        assertThat(guard.build())
                .contains(new GuardBuild(
                        new Posts(
                                post, Length.inches(60), new Posts.Fixing.Lapped(), Optional.empty(), Posts.Top.SQUARE),
                        new Section(Length.inches(1, 1, 2), Length.inches(3, 1, 2)),
                        new GuardBuild.BottomRail(
                                new Section(Length.inches(1, 1, 2), Length.inches(2, 1, 2)), Length.inches(1)),
                        new Infill.Balusters(thin, Length.inches(4))));
    }

    @Test
    void a_guard_that_only_states_its_figures_stays_what_it_was() {
        assertThat(JobJson.understood(JobJson.WHOLE).brief().guard())
                .isEqualTo(new Guard(
                        true,
                        Optional.of(Length.inches(36)),
                        Optional.of(Length.inches(4)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    @Test
    void the_guard_along_the_edge_above_is_read() {
        String edge = ", \"along the edge above\": { \"height\": 42, \"bottom rail above floor\": 3, \"ball\": 3.5 } }";
        String whole = job(WHOLE.strip().substring(0, WHOLE.strip().length() - 1) + edge);
        assertThat(JobJson.understood(whole).brief().guard().edge())
                .contains(new EdgeGuard(
                        Length.inches(42), Optional.of(Length.inches(3)), Optional.of(Length.inches(3, 1, 2))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # Figures that contradict what is built, both named.
            "height": 36,     | "height": 36, "gap": 4.5,      | wanted > guard > gap: found `4.5`, expected less than the ball of 4" that the infill keeps back, or no such line
            "height": 36,     | "height": 36, "gap": 4,        | wanted > guard > gap: found `4`, expected less than the ball of 4" that the infill keeps back, or no such line
            "height": 36,     | "height": 36, "triangle": 6,   | wanted > guard > triangle: found `6`, expected no such line where the bottom rail says how high it is above the nosings: the triangle follows
            "wanted": "yes"   | "wanted": "no"                 | wanted > guard > wanted: found `no`, expected yes, or no lines that say what the guard is built of
            # What belongs to one kind only.
            "fixing": "lapped" | "fixing": "notched", "notch": 4 | wanted > guard > posts > notch: found `4`, expected less than the thickness of the post
            "fixing": "lapped" | "fixing": "lapped", "notch": 1  | wanted > guard > posts > notch: found `1`, expected no such line with posts that are not notched
            "kind": "balusters" | "kind": "panels"              | wanted > guard > infill > width: found `1.5`, expected no such line with panels ;; wanted > guard > infill > ball: found `4`, expected no such line with panels
            # What does not fit.
            "infill": {"kind" | "along the edge above": { "height": 20, "bottom rail above floor": 18 }, "infill": {"kind" | a height that leaves room between bottom rail and top rail
            "fixing": "lapped" | "fixing": "set on", "behind nosing": 8 | posts that stand no farther behind the nosing than the tread is wide
            """)
    void it_is_refused(String old, String changed, String expected) {
        List<String> problems = problems(old, changed);
        String[] each = expected.split(" ;; ");
        assertThat(problems).hasSameSizeAs(each);
        for (int i = 0; i < each.length; i++) {
            assertThat(problems.get(i)).contains(each[i]);
        }
    }

    @Test
    void rails_that_leave_no_room_between_them_are_refused() {
        String low = WHOLE.replace("\"height\": 36", "\"height\": 30").replace("nosings\": 1", "nosings\": 24");
        assertThat(JobJson.problems(job(low)))
                .singleElement()
                .asString()
                .contains("wanted > guard > height", "room between bottom rail and top rail");
    }

    /** Posts alone say too little to lay a guard out: all that is missing is asked for at once. */
    @Test
    void everything_that_is_missing_is_asked_for_at_once() {
        assertThat(JobJson.problems(job("\"guard\": {\"wanted\": \"yes\", " + POSTS + "}")))
                .hasSize(4)
                .anyMatch(problem -> problem.contains("wanted > guard > height"))
                .anyMatch(problem -> problem.contains("wanted > guard > top rail"))
                .anyMatch(problem -> problem.contains("wanted > guard > bottom rail"))
                .anyMatch(problem -> problem.contains("wanted > guard > infill"));
    }

    @Test
    void a_grip_with_finger_recesses_is_read() {
        String grip = "{\"kind\": \"finger recesses\", \"width\": 2.5, \"height\": 2.25, "
                + "\"recess\": {\"start\": 0.75, \"depth\": 0.3125, \"height\": 0.375}, "
                + "\"width above recess\": 2, \"edge radius\": 0.125}";
        Notes notes = JobJson.understood(JobJson.with("{\"kind\": \"round\", \"diameter\": 1.5}", grip));
        assertThat(notes.brief().handrail().grip())
                .contains(new Handrail.Grip.Recessed(
                        new Handrail.Grip.Rectangle(Length.inches(2, 1, 2), Length.inches(2, 1, 4)),
                        new Handrail.Grip.Recess(
                                Length.inches(0, 3, 4), Length.inches(0, 5, 16), Length.inches(0, 3, 8)),
                        Length.inches(2),
                        Length.inches(0, 1, 8)));
    }
}
