package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Nothing jumps about while one works. */
final class CalmTest extends Visit {
    @Test
    void nothing_moves_by_itself_for_those_who_asked_for_that() throws Exception {
        page.prefers("prefers-reduced-motion", "reduce");
        openExample("tape");
        page.tapOn(Page.row("measured > rise"));
        page.until("return document.querySelector('dialog[open]')");
        assertThat(page.run("return document.getAnimations().length")).isEqualTo(0L);
    }

    @Test
    void nothing_is_shifted_while_a_value_changes() throws Exception {
        page.on(Screen.DESKTOP);
        // A browser leaves out what moves soon after a touch: on a slow device little is soon.
        page.isSlow(6);
        openExample("stair");
        page.until("return document.querySelector('.dots svg')");
        page.run("window.shifts = []; new PerformanceObserver(list => list.getEntries().forEach(one => {"
                + " if (!one.hadRecentInput) window.shifts.push(...one.sources.map(({ node, previousRect, currentRect }) =>"
                + " [node?.nodeName, node?.className, node?.textContent.trim().slice(0, 40), JSON.stringify(previousRect),"
                + " JSON.stringify(currentRect)].join(' '))); })).observe({ type: 'layout-shift' })");
        page.run("window.before = document.querySelector('.place-stair svg').outerHTML");
        page.tapOn(Page.row("measured > rise"));
        // So little that the choices below the drawing stay as many, and what changes is only read anew; and at once,
        // for on the way there letter by letter other stairs are drawn.
        page.pasteOver("8' 9 7/8\"");
        page.tap("Done");
        page.until("return document.querySelector('.place-stair svg').outerHTML !== window.before");
        page.untilSaved();
        // Two frames later the browser has told of every shift so far.
        page.run("await new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
        assertThat((List<?>) page.run("return window.shifts")).isEmpty();
    }
}
