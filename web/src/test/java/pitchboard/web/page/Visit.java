package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;
import pitchboard.store.FileTrouble;
import pitchboard.web.Desk;
import pitchboard.web.Settings;

/**
 * A test of the page: a server of its own, and a browser that has kept nothing of any other, since it keeps things apart
 * by the server's port. After each, the browser must have had nothing to complain about.
 */
@Tag("with-the-engine")
@ExtendWith(Chromium.class)
abstract class Visit {
    @TempDir
    Path folder;

    Desk desk;
    Page page;
    private String window;
    private int port;

    @BeforeEach
    void arrive() throws Exception {
        desk = Desk.of(settings(folder.resolve("data"), 0));
        port = desk.port();
        ChromeDriver driver = Chromium.driver();
        page = new Page(driver);
        window = driver.getWindowHandle();
        driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
        page.on(Screen.PHONE);
        page.complaints();
    }

    Settings settings(Path data, int port) {
        return Settings.of(port, data);
    }

    /** What the browser may complain about all the same. */
    Predicate<String> expected() {
        return complaint -> false;
    }

    @AfterEach
    void leave() {
        if (page == null) {
            return;
        }
        ChromeDriver driver = page.driver();
        List<String> complaints = page.complaints();
        driver.getWindowHandles().stream()
                .filter(other -> !other.equals(window))
                .forEach(other -> {
                    driver.switchTo().window(other);
                    driver.close();
                });
        driver.switchTo().window(window);
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of()));
        page.isSlow(1);
        driver.get("about:blank");
        desk.close();
        assertThat(complaints).filteredOn(expected().negate()).isEmpty();
    }

    void serverStops() {
        desk.close();
    }

    /** On the same port, with the same jobs. */
    void serverComesBack() throws FileTrouble {
        desk = Desk.of(settings(folder.resolve("data"), port));
    }

    /** Opens the example in a place, and gives its id. */
    String openExample(String place) throws Exception {
        String id = desk.example();
        page.open(desk.address() + "#job/" + id + "/" + place);
        page.until("return document.querySelector('.head .saving')");
        page.until("return (await import('/page/state.js')).state.answer !== null");
        return id;
    }

    /** A line of the job as the server has it in its newest version. */
    String saved(String id, String... way) throws Exception {
        String[] whole = new String[way.length + 1];
        whole[0] = "job";
        System.arraycopy(way, 0, whole, 1, way.length);
        return desk.get("/api/jobs/" + id).text(whole);
    }
}
