package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.FluentWait;

/** The page as one file on a phone that knows no server, and its way back into the library. */
final class TakenAlongTest extends Visit {
    private static final String BROUGHT = "Stair to the sail loft brought back.json";

    @Override
    Predicate<String> expected() {
        return complaint -> complaint.contains("409 (Conflict)");
    }

    private Path file(String id) throws Exception {
        Path file = folder.resolve("along.html");
        Files.write(file, desk.get("/api/jobs/" + id + "/along.html").bytes());
        return file;
    }

    private Path changedOnTheWay(String id) throws Exception {
        page.driver()
                .executeCdpCommand(
                        "Browser.setDownloadBehavior",
                        Map.of("behavior", "allow", "downloadPath", folder.toString(), "eventsEnabled", false));
        page.open(file(id).toUri().toString());
        page.untilSays(Page.row("measured > rise"), "8' 9 3/4\"");
        page.goTo("Stair");
        String before = page.text(".headline h2");
        page.until("return document.querySelector('.lens svg')");
        page.goTo("Tape");
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("8' 11\"");
        page.tap("Done");
        page.goTo("Stair");
        page.untilAnotherStair(before);
        page.goTo("Papers");
        page.until("return document.querySelectorAll('.sheets li').length > 5");
        page.tap("Save to bring back");
        page.untilSays(".notice", "Saved as a file");
        return folder.resolve(BROUGHT);
    }

    private void waitFor(Path file) {
        new FluentWait<>(file).withTimeout(Duration.ofSeconds(10)).until(Files::exists);
    }

    @Test
    void it_works_out_draws_and_saves_and_asks_the_network_for_nothing() throws Exception {
        String id = desk.example();
        waitFor(changedOnTheWay(id));
        assertThat((List<?>) page.run("return performance.getEntriesByType('resource').map(one => one.name)"
                        + ".filter(name => !/^(data|blob):/.test(name))"))
                .isEmpty();
        page.reload();
        page.goTo("Tape");
        page.untilSays(Page.row("measured > rise"), "8' 11\"");
    }

    @Test
    void what_was_changed_on_the_way_is_put_together_with_what_was_changed_at_home() throws Exception {
        String id = desk.example();
        Path brought = changedOnTheWay(id);
        waitFor(brought);
        page.open(desk.address() + "#job/" + id + "/stair");
        page.tapOn(Page.row("wanted > width"));
        page.typeOver("38\"");
        page.tap("Done");
        page.untilSaved();
        page.open(desk.address());
        WebElement taken = (WebElement) page.until("return document.querySelector('input[type=file]')");
        // As another device would: this one knows the job as it was saved last.
        page.run("localStorage.clear()");
        taken.sendKeys(brought.toString());
        page.untilSays(".head h1", "Stair to the sail loft");
        page.untilSays(Page.row("measured > rise"), "8' 11\"");
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("8' 11\"");
        assertThat(saved(id, "wanted", "width")).isEqualTo("38\"");
    }
}
