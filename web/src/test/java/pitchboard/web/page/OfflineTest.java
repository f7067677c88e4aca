package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pitchboard.web.Answer;
import pitchboard.web.Desk;

/** Without the server: the page that the browser keeps goes on alone, and comes together with the others afterwards. */
final class OfflineTest extends Visit {
    private String id;

    @BeforeEach
    void keepThePage() throws Exception {
        id = openExample("tape");
        page.until("return (await navigator.serviceWorker.ready).active.state === 'activated'");
        page.until("return navigator.serviceWorker.controller !== null");
    }

    @Override
    Predicate<String> expected() {
        return complaint -> complaint.contains("net::ERR_") || complaint.contains("409 (Conflict)");
    }

    private void leaveTheServer() {
        serverStops();
        page.reload();
        page.untilSays(".saving.away", "kept on this device");
    }

    private String headline() {
        page.goTo("Stair");
        return page.text(".headline h2");
    }

    @Test
    void a_changed_measurement_is_worked_out_without_the_server_and_saved_when_it_is_back() throws Exception {
        String before = headline();
        leaveTheServer();
        page.goTo("Tape");
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("8' 11\"");
        page.tap("Done");
        page.goTo("Stair");
        page.untilAnotherStair(before);
        serverComesBack();
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("8' 11\"");
    }

    @Test
    void what_others_changed_meanwhile_is_put_together_with_it() throws Exception {
        leaveTheServer();
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("8' 11\"");
        page.tap("Done");
        somebodyElseWants("38\"");
        serverComesBack();
        page.untilSays(".notice", "Put together with 1 changes made elsewhere");
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("8' 11\"");
        assertThat(saved(id, "wanted", "width")).isEqualTo("38\"");
    }

    @Test
    void what_both_changed_is_shown_twice_and_nothing_is_overwritten_before_somebody_decides() throws Exception {
        leaveTheServer();
        page.goTo("Stair");
        page.tapOn(Page.row("wanted > width"));
        page.typeOver("42\"");
        page.tap("Done");
        somebodyElseWants("38\"");
        serverComesBack();
        page.untilSays("dialog.over-conflict", "Changed in two places");
        assertThat(page.text("dialog.over-conflict")).contains("42\"", "38\"", "on this device", "elsewhere");
        assertThat(saved(id, "wanted", "width")).isEqualTo("38\"");
        page.tap("elsewhere");
        page.tap("Keep these");
        page.untilSaved();
        page.untilSays(Page.row("wanted > width"), "38\"");
    }

    /** Another device saves the job with another width, at a server that this page does not reach. */
    private void somebodyElseWants(String width) throws Exception {
        try (Desk elsewhere = Desk.of(settings(folder.resolve("data"), 0))) {
            Answer now = elsewhere.get("/api/jobs/" + id);
            String job = now.body().substring(now.body().indexOf("\"job\":"));
            String changed = job.replace("\"width\":\"40\\\"\"", "\"width\":\"" + width.replace("\"", "\\\"") + "\"");
            assertThat(changed).isNotEqualTo(job);
            assertThat(elsewhere
                            .put("/api/jobs/" + id, "{\"base\":" + now.text("version") + "," + changed)
                            .status())
                    .isEqualTo(200);
        }
    }
}
