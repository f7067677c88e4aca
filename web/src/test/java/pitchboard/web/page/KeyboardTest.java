package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** Without a pointer: Tab, Enter and Escape lead everywhere, and it is seen where one is. */
final class KeyboardTest extends Visit {
    /** In words, what has the focus. */
    private static final String FOCUSED = "const one = document.activeElement;"
            + "return (one.ariaLabel ?? one.innerText ?? '').replace(/\\s+/g, ' ').trim()";

    private static final String FOCUS_IS_SEEN =
            "const one = document.activeElement; const style = getComputedStyle(one.closest('label') ?? one);"
                    + "return one.matches(':focus-visible') && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2";

    private static final int FAR = 120;

    private void tabTo(String words) {
        for (int i = 0; i < FAR; i++) {
            page.keys(Keys.TAB);
            if (((String) page.run(FOCUSED)).startsWith(words)) {
                assertThat(page.run(FOCUS_IS_SEEN)).as("focus on " + words).isEqualTo(true);
                return;
            }
        }
        throw new AssertionError("no way with Tab to " + words);
    }

    @Test
    void the_way_from_the_list_to_a_changed_answer_and_to_the_papers_needs_no_pointer() throws Exception {
        page.open(desk.address());
        page.until("return document.querySelector('.job')");
        tabTo("Stair to the sail loft");
        page.keys(Keys.ENTER);
        page.untilSays(".head h1", "Stair to the sail loft");
        page.until("return document.querySelector(given[0])", Page.row("measured > rise"));
        tabTo("Rise");
        page.keys(Keys.ENTER);
        page.until("return document.activeElement?.matches('dialog .keypad-text')");
        page.typeOver("8' 11\"");
        page.untilSays("#keypad-heard", "8'-11\"");
        tabTo("Done");
        page.keys(Keys.ENTER);
        page.untilGone("dialog[open]");
        page.until(FOCUSED + ".startsWith('Rise')");
        page.untilSaved();
        assertThat(saved(desk.example(), "measured", "rise")).isEqualTo("8' 11\"");
        tabTo("Papers");
        page.keys(Keys.ENTER);
        page.until("return document.querySelector('.sheets svg')");
    }

    @Test
    void escape_closes_whatever_lies_over_the_page_and_gives_the_focus_back() throws Exception {
        openExample("tape");
        page.until("return document.querySelector(given[0])", Page.row("measured > rise"));
        tabTo("More for this job");
        for (int i = 0; i < 2; i++) {
            page.keys(Keys.ENTER);
            page.until("return document.querySelector('dialog[open]')?.contains(document.activeElement)");
            page.keys(Keys.ESCAPE);
            page.untilGone("dialog[open]");
            page.until(FOCUSED + " === 'More for this job'");
        }
        tabTo("Rise");
        page.keys(Keys.ENTER);
        page.until("return document.activeElement?.matches('dialog .keypad-text')");
        page.keys(Keys.ESCAPE);
        page.untilGone("dialog[open]");
        page.until(FOCUSED + ".startsWith('Rise')");
    }
}
