package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** One job before two people at once. */
final class SharedJobTest extends Visit {
    @Override
    Predicate<String> expected() {
        return complaint -> complaint.contains("409 (Conflict)");
    }

    @Test
    void the_other_window_sees_what_was_saved_here_without_asking() throws Exception {
        String id = openExample("tape");
        String first = page.openBeside(desk.address() + "#job/" + id + "/tape");
        page.untilSays(Page.row("measured > rise"), "8' 9 3/4\"");
        String second = page.driver().getWindowHandle();
        page.lookAt(first);
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("9' 1\"");
        page.tap("Done");
        page.untilSaved();
        page.lookAt(second);
        page.untilSays(Page.row("measured > rise"), "9' 1\"");
        page.untilSays(".notice", "Changed on another device just now.");
    }

    @Test
    void different_answers_of_two_windows_are_put_together() throws Exception {
        String id = openExample("tape");
        String first = page.openBeside(desk.address() + "#job/" + id + "/tape");
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("9' 1");
        String second = page.driver().getWindowHandle();
        page.lookAt(first);
        page.tapOn(Page.row("measured > run available"));
        page.typeOver("12' 2\"");
        page.tap("Done");
        page.untilSaved();
        page.lookAt(second);
        page.typeOver("9' 2\"");
        page.tap("Done");
        page.untilSays(Page.row("measured > run available"), "12' 2\"");
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("9' 2\"");
        assertThat(saved(id, "measured", "run available")).isEqualTo("12' 2\"");
    }
}
