package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.OutputType;

/** The same stair is held against other rulebooks where its rules are, and again after every change. */
final class OtherBooksTest extends Visit {
    private static final String TEXT = "return document.querySelector('.under').innerText";
    private static final String DONE =
            "const { state } = await import('/page/state.js'); return state.under.told && state.under.of === state.answer";

    private void against(String book) throws Exception {
        page.run(
                "const choice = document.querySelector('.under select'); choice.value = given[0];"
                        + "choice.dispatchEvent(new Event('change'))",
                book);
        page.until(DONE);
        page.until("return document.querySelector('.under').innerText.includes('1 rule') || "
                + "document.querySelector('.under').innerText.includes('rules ')");
    }

    @Test
    void another_book_tells_what_fails_and_what_would_fit_both() throws Exception {
        String id = openExample("rules");
        against("IBC 2021");
        String text = (String) page.run(TEXT);
        assertThat(text).contains("IBC 2021", "rules fail", "1011.5.2", "No risers and run fit under all of them.");
        Files.createDirectories(Path.of("target", "screenshots"));
        page.run("document.querySelector('.under').scrollIntoView()");
        Files.write(
                Path.of("target", "screenshots", "other books.png"),
                page.driver().getScreenshotAs(OutputType.BYTES));

        page.tap("Leave IBC 2021 out");
        assertThat((String) page.run(TEXT)).doesNotContain("1011.5.2");
        against("IRC 2018");
        assertThat((String) page.run(TEXT)).contains("Risers and run that all of them let through");
        page.run("document.querySelectorAll('.under .row')[1].click()");
        page.until(
                "return (await import('/page/state.js')).state.open.job.wanted.steps['number of risers'] !== 'free'");
        page.until("return document.querySelector('.saving').classList.contains('saved')");
        assertThat(saved(id, "wanted", "steps", "number of risers")).isNotEqualTo("free");
    }
}
