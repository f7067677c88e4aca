package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is typed is kept as it was typed. */
final class TypingTest extends Visit {
    @Test
    void a_reload_in_the_middle_of_typing_loses_nothing_that_was_accepted() throws Exception {
        String id = openExample("tape");
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("9' 1\"");
        page.tap("Done");
        page.tapOn(Page.row("measured > run available"));
        page.typeOver("12' 2\"");
        page.untilSays("#keypad-heard", "12'-2\"");
        page.reload();
        page.untilSays(Page.row("measured > rise"), "9' 1\"");
        page.untilSays(Page.row("measured > run available"), "12' 2\"");
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("9' 1\"");
    }

    @Test
    void half_typed_words_are_told_apart_and_the_stair_stays_as_it_was() throws Exception {
        String id = openExample("tape");
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("9' 4 3/");
        page.until("return document.querySelector('.wrong-words span')");
        page.reload();
        page.until("return document.querySelector(given[0])", Page.row("measured > rise") + ".wrong");
        page.tapOn(Page.row("measured > rise"));
        page.press("Take back the last key", "Take back the last key", "3/4");
        page.untilSays("#keypad-heard", "9'-4 3/4\"");
        page.tap("Done");
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("9' 4 3/4\"");
    }

    @Test
    void papers_from_the_server_wait_for_what_was_just_typed() throws Exception {
        String id = openExample("papers");
        page.run("const send = window.fetch; const held = new Promise(free => { window.letGo = free; });"
                + "window.fetch = async (to, how) => { if (how?.method === 'PUT') await held; return send(to, how); };"
                + "window.open = () => ({ set location(to) { window.went = to; } });");
        page.tapOn(Page.row("job"));
        page.typeOver("Boat shed stair");
        page.tap("Done");
        page.tap("All sheets as PDF");
        assertThat(page.run("return window.went ?? 'nowhere yet'")).isEqualTo("nowhere yet");
        page.run("window.letGo()");
        String went = (String) page.until("return window.went");
        assertThat(went).endsWith("/papers.pdf");
        assertThat(saved(id, "job")).isEqualTo("Boat shed stair");
    }

    @Test
    void cancelling_gives_the_answer_back_that_was_there() throws Exception {
        String id = openExample("tape");
        page.tapOn(Page.row("measured > rise"));
        page.typeOver("nonsense");
        page.until("return document.querySelector('.wrong-words span')");
        page.tap("Cancel");
        page.untilSays(Page.row("measured > rise"), "8' 9 3/4\"");
        page.untilSaved();
        assertThat(saved(id, "measured", "rise")).isEqualTo("8' 9 3/4\"");
    }

    @Test
    void millimetres_and_back_leave_the_numbers_as_they_were() throws Exception {
        String id = openExample("tape");
        String before = desk.get("/api/jobs/" + id).text("version");
        String lengths = lengths();
        convert("Show in millimetres");
        page.untilSays(Page.row("measured > rise"), "2686.05 mm");
        page.untilSaved();
        assertThat(saved(id, "units")).isEqualTo("millimetres");
        convert("Show in inches");
        page.until("return (await import('/page/state.js')).state.open.job.units === 'inches'");
        page.untilSaved();
        assertThat(lengths()).isEqualTo(lengths);
        assertThat(desk.get("/api/jobs/" + id).text("version")).isNotEqualTo(before);
    }

    private void convert(String words) {
        page.tap("More for this job");
        page.tap(words);
        page.untilGone("dialog[open]");
    }

    /** What the engine makes of it: every length and every mark. */
    private String lengths() {
        return (String) page.until("const { state } = await import('/page/state.js');"
                + "const { ask } = await import('/page/engine.js');"
                + "const { outcome } = await ask({ do: 'solve', job: state.open.job });"
                + "return JSON.stringify([outcome.stair, outcome.stringer, outcome.pieces, outcome.outcome])");
    }
}
