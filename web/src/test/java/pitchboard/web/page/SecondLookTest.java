package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.OutputType;

/** The stringers are looked at by finite elements when somebody asks, where the page tells whether it carries. */
final class SecondLookTest extends Visit {
    private static final String TEXT = "return document.querySelector('.look').innerText";

    @Test
    void a_tap_tells_how_finite_elements_stand_to_the_throat_and_shows_the_stress() throws Exception {
        openExample("rules");
        assertThat(page.run("return document.querySelector('.look')")).isNull();
        page.tap("Look at the stringers by finite elements");
        page.until("return document.querySelector('.look .sheet-paper svg')");
        assertThat((String) page.run(TEXT)).contains("By finite elements the stringers sag", "of what the throat does");
        assertThat((String) page.run("return document.querySelector('.look .sheet-paper svg').textContent"))
                .contains("Stress along the grain");
        Files.createDirectories(Path.of("target", "screenshots"));
        page.run("document.querySelector('.look').scrollIntoView()");
        Files.write(
                Path.of("target", "screenshots", "second look.png"),
                page.driver().getScreenshotAs(OutputType.BYTES));
    }
}
