package pitchboard.intake.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;

/** One job changed on two phones. */
final class MergeTest {
    private static final String BASE = """
            {"rise": "105", "header": {"what": "beam", "depth": "9"}, "risers": "open",
             "overhead": [{"what": "beam", "underside": "90"}, {"what": "duct", "underside": "90"}]}""";

    private static Merge merge(String mine, String theirs) {
        return Merge.of(written(BASE), written(mine), written(theirs));
    }

    private static Written written(String json) {
        return JsonReader.read(json).match(Transcript.Legible::written, illegible -> {
            throw new AssertionError(illegible.problems());
        });
    }

    private static String with(String old, String changed) {
        assertThat(BASE).contains(old);
        return BASE.replace(old, changed);
    }

    private static void check(Merge merge, String job, List<String> conflicts, List<String> taken) {
        assertThat(Differences.between(merge.job(), written(job)).all()).isEmpty();
        assertThat(merge.conflicts()).extracting(Merge.Conflict::field).isEqualTo(conflicts);
        assertThat(merge.taken().all()).extracting(Difference::field).isEqualTo(taken);
    }

    @Test
    void changes_of_different_lines_go_together() {
        check(
                merge(with("105", "106"), with("\"9\"", "\"11\"")),
                with("105", "106").replace("\"9\"", "\"11\""),
                List.of(),
                List.of("header > depth"));
    }

    @Test
    void a_line_that_both_changed_stays_mine_and_shows_all_three() {
        Merge merge = merge(with("105", "106"), with("105", "107"));
        check(merge, with("105", "106"), List.of("rise"), List.of());
        assertThat(merge.conflicts().get(0).base()).map(Written::anywhere).contains(new Written.Text("105"));
        assertThat(merge.conflicts().get(0).theirs()).map(Written::anywhere).contains(new Written.Text("107"));
    }

    @Test
    void a_group_taken_out_here_and_changed_there_is_a_conflict_on_the_group() {
        String without = with("\"header\": {\"what\": \"beam\", \"depth\": \"9\"}, ", "");
        check(merge(without, with("\"9\"", "\"11\"")), without, List.of("header"), List.of());
    }

    @Test
    void a_landing_measured_by_both_has_what_both_measured() {
        String mine = with("\"risers\"", "\"landing\": {\"depth\": \"40\"}, \"risers\"");
        String theirs = with("\"risers\"", "\"landing\": {\"width\": \"50\"}, \"risers\"");
        check(
                merge(mine, theirs),
                with("\"risers\"", "\"landing\": {\"depth\": \"40\", \"width\": \"50\"}, \"risers\""),
                List.of(),
                List.of("landing > width"));
    }

    @Test
    void two_kinds_of_one_thing_are_not_mixed() {
        String mine = with("\"risers\"", "\"nosing\": {\"kind\": \"rounded\", \"radius\": \"1/2\"}, \"risers\"");
        String theirs = with("\"risers\"", "\"nosing\": {\"kind\": \"bevelled\", \"bevel\": \"1/4\"}, \"risers\"");
        check(merge(mine, theirs), mine, List.of("nosing"), List.of());
        String boards = with("\"open\"", "{\"kind\": \"boards\"}");
        check(merge(boards, with("\"open\"", "{\"thickness\": \"1\"}")), boards, List.of("risers"), List.of());
    }

    @Test
    void items_of_a_list_are_merged_line_by_line_while_they_stand_where_they_stood() {
        String mine = with("\"duct\", \"underside\": \"90\"", "\"duct\", \"underside\": \"88\"");
        check(
                merge(mine, with("\"what\": \"duct\"", "\"what\": \"pipe\"")),
                mine.replace("\"what\": \"duct\"", "\"what\": \"pipe\""),
                List.of(),
                List.of("overhead > 2 > what"));
    }

    @Test
    void an_item_added_at_the_end_is_taken_whole() {
        String theirs = with("}]}", "}, {\"what\": \"lamp\", \"underside\": \"80\"}]}");
        String mine = with("\"beam\", \"underside\": \"90\"", "\"beam\", \"underside\": \"91\"");
        check(
                merge(mine, theirs),
                mine.replace("}]}", "}, {\"what\": \"lamp\", \"underside\": \"80\"}]}"),
                List.of(),
                List.of("overhead > 3"));
    }

    /** By number alone the lower underside of the beam would have gone to the duct. */
    @Test
    void when_an_item_moved_up_a_change_of_the_list_is_a_conflict() {
        String mine = with("{\"what\": \"beam\", \"underside\": \"90\"}, ", "");
        check(
                merge(mine, with("\"beam\", \"underside\": \"90\"", "\"beam\", \"underside\": \"84\"")),
                mine,
                List.of("overhead"),
                List.of());
    }

    @Test
    void two_items_added_by_two_people_are_one_conflict_on_the_list() {
        String mine = with("}]}", "}, {\"what\": \"lamp\"}]}");
        check(merge(mine, with("}]}", "}, {\"underside\": \"70\"}]}")), mine, List.of("overhead"), List.of());
    }
}
