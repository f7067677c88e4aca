package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;

/** What a job costs, on the page: files are brought once, a day is said, and price and papers are there. */
final class CostsTest extends Visit {
    private static final Path EXAMPLES =
            Path.of("../examples/yard").toAbsolutePath().normalize();

    /** A browser says so itself when a file is refused. */
    @Override
    Predicate<String> expected() {
        return complaint -> complaint.contains("/api/prices/rates") && complaint.contains("422");
    }

    private void bring(String label, String file) {
        page.driver()
                .findElement(By.cssSelector(".costs input[aria-label='" + label + "']"))
                .sendKeys(EXAMPLES.resolve(file).toString());
    }

    private void open() throws Exception {
        openExample("papers");
        page.until("return document.querySelector('.costs summary')");
        page.tapOn(".costs summary");
        page.until("return document.querySelector('.costs[open] input[type=file]')");
    }

    private void bringBoth() {
        bring("Choose a price list", "harbour-street-timber.yaml");
        page.until("return document.querySelector('.costs').textContent.includes('Harbour Street Timber')");
        bring("Choose a file of rates", "two-of-us.yaml");
        page.until("return document.querySelector('.costs input[type=date]')");
    }

    private void setDay(String day) {
        page.run(
                "const day = document.querySelector('.costs input[type=date]');"
                        + "day.value = given[0]; day.dispatchEvent(new Event('change'))",
                day);
    }

    @Test
    void a_job_is_costed_from_files_that_are_brought_once() throws Exception {
        open();
        bringBoth();
        setDay("2027-05-14");
        page.tap("Work it out");
        page.until("return document.querySelector('.costs-lines .total')");
        assertThat(page.text(".costs-lines .total")).contains("price", "2565.00");
        assertThat(page.text(".costs")).contains("2565.00 USD", "tread screws", "from memory", "with the order");
        assertThat(page.text(".costs .alarm summary")).contains("1 thing to look at before this is offered");
        String quote =
                (String) page.run("return [...document.querySelectorAll('.costs a')].at(-1).getAttribute('href')");
        assertThat(quote).endsWith("/quote.pdf?on=2027-05-14");
        assertThat(desk.get(quote).status()).isEqualTo(200);
        page.run("document.querySelector('.costs').scrollIntoView()");
        Path pictures = Files.createDirectories(Path.of("target/screenshots"));
        Files.write(pictures.resolve("costs-worked-out.png"), page.driver().getScreenshotAs(OutputType.BYTES));
    }

    @Test
    void what_does_not_carry_is_told_before_it_is_offered() throws Exception {
        open();
        page.run("(await import('/page/desk.js')).write('wanted > support', undefined)");
        page.until("return (await import('/page/state.js')).state.saving === 'saved'"
                + " && (await import('/page/state.js')).state.answer.outcome.strength.failing");
        bringBoth();
        setDay("2027-05-14");
        page.tap("Work it out");
        page.until("return document.querySelector('.costs .alarm summary')");
        assertThat(page.text(".costs .alarm summary")).contains("things to look at before this is offered");
        page.tapOn(".costs .alarm summary");
        page.until("return document.querySelector('.costs .alarm[open]')?.innerText.includes('does not carry')");
    }

    @Test
    void a_file_that_cannot_be_understood_is_told_and_changes_nothing() throws Exception {
        open();
        bringBoth();
        bring("Choose a file of rates", "harbour-street-timber.yaml");
        page.until("return document.querySelector('.costs [role=alert]')");
        assertThat(page.text(".costs [role=alert]")).contains("expected");
        assertThat(page.text(".costs")).contains("Two of us, spring 2027");
    }
}
