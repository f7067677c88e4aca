package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** From the tape measure to the papers. */
final class WholeJobTest extends Visit {
    @Test
    void a_phone_goes_from_the_tape_to_the_papers() throws Exception {
        goesFromTheTapeToThePapers(Screen.PHONE);
    }

    @Test
    void a_desktop_goes_from_the_tape_to_the_papers() throws Exception {
        goesFromTheTapeToThePapers(Screen.DESKTOP);
    }

    private void goesFromTheTapeToThePapers(Screen screen) throws Exception {
        page.on(screen);
        page.open(desk.address());
        page.tap("New job");
        page.untilSays(".head h1", "New stair");
        measure();
        page.goTo("Stair");
        page.untilSays(".headline h2", "risers of");
        String before = page.text(".headline h2");
        chooseAnotherDot();
        page.untilAnotherStair(before);
        page.until("return document.querySelector('.headline p').textContent.includes('It does not carry')");
        page.goTo("Rules");
        page.untilSays(".verdict.pass", "rules pass");
        page.goTo("Wood");
        tickOffAndReload();
        page.goTo("Papers");
        page.until("return document.querySelectorAll('.sheets li svg').length > 5");
        thePdfBearsTheJobsName();
    }

    /** Over ground that slopes the rise is not one number: readings take its place, and one tap takes it back. */
    @Test
    void a_rise_over_sloping_ground_is_read_down_from_a_level_line() throws Exception {
        String id = openExample("tape");
        String before = page.text(Page.row("measured > rise"));
        page.tapOn(Page.row("measured > rise"));
        page.tap("The ground slopes");
        page.press("0");
        page.tap("Done");
        page.answer("measured > level line > readings > 1 > down", "8", "'", "9", "\"");
        page.answer("measured > level line > readings > 2 > out", "1", "4", "'");
        page.answer("measured > level line > readings > 2 > down", "8", "'", "9", "1/2");
        page.untilSaved();
        assertThat(saved(id, "measured", "level line", "readings", "2", "down")).isEqualTo("8' 9 1/2\"");
        assertThat(page.has(Page.row("measured > rise"))).isFalse();
        page.until("const { state } = await import('/page/state.js');"
                + "return state.problems.length === 0 && !state.stale && state.answer.outcome.stair");
        page.tap("The ground is level");
        page.tap("Cancel");
        page.tap("The ground is level");
        page.typeOver("8' 9 3/4\"");
        page.tap("Done");
        page.untilSays(Page.row("measured > rise"), "8' 9 3/4\"");
        assertThat(page.text(Page.row("measured > rise"))).isEqualTo(before);
        assertThat(page.has(Page.row("measured > level line > readings > 1 > out")))
                .isFalse();
    }

    private void measure() {
        page.answer("measured > rise", "8", "'", "9", "3/4");
        page.choose("measured > finish to come above", "None");
        page.choose("measured > finish to come below", "None");
        page.answer("measured > run available", "1", "1", "'", "6", "\"");
        page.choose("measured > foot lands on", "Concrete pad");
        page.choose("measured > left side", "Open");
        page.choose("measured > right side", "Wall");
        page.choose("measured > where", "Outdoors");
        page.tapOn(Page.row("measured > header > what"));
        page.typeOver("landing beam");
        page.tap("Done");
        page.answer("measured > header > depth", "1", "5", "\"");
        page.answer("measured > header > decking", "1", "1/2");
        page.untilSaved();
    }

    private void chooseAnotherDot() {
        page.until("return document.querySelector('.dots svg[role=img]')");
        page.tapOn(".place-stair .card li:nth-child(2) .row");
        page.untilSaved();
    }

    private void tickOffAndReload() {
        page.tapOn(".marks tbody tr:first-child input");
        page.untilSays(".marks .done .figure", "");
        page.reload();
        page.until("return document.querySelector('.marks .done input:checked')");
    }

    private void thePdfBearsTheJobsName() throws Exception {
        String link = (String) page.until("return document.querySelector('a.main')?.getAttribute('href')");
        byte[] pdf = desk.get(link).bytes();
        assertThat(pdf).startsWith('%', 'P', 'D', 'F');
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(read)).contains("New stair");
        }
    }
}
