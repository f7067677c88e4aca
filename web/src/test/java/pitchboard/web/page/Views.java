package pitchboard.web.page;

import java.util.LinkedHashMap;
import java.util.Map;

/** Everything that can be seen of the page, each by its name with the way from the tape of a job to it and back. */
final class Views {
    private static final String PLACE = "Tape";

    /** A step of the way. */
    interface Step {
        void go() throws Exception;
    }

    private final Page page;
    private final Map<String, Step> ways = new LinkedHashMap<>();

    Views(Page page) {
        this.page = page;
        ways.put("tape", () -> page.goTo(PLACE));
        ways.put("stair", () -> {
            page.goTo("Stair");
            page.until("return document.querySelector('.dots svg')");
        });
        ways.put("rules", () -> {
            page.goTo("Rules");
            page.until("return document.querySelector('.verdict')");
        });
        ways.put("wood", () -> page.goTo("Wood"));
        ways.put("papers", () -> {
            page.goTo("Papers");
            page.until("return document.querySelector('.sheets svg')");
        });
        ways.put("costs", () -> {
            page.goTo("Papers");
            page.tapOn(".costs summary");
            page.until("return document.querySelector('.costs[open] input[type=file]')");
        });
        ways.put("keypad", () -> asked("measured > rise", ".keypad"));
        ways.put("choices", () -> asked("measured > foot lands on", ".checks"));
        ways.put("menu", () -> over("More for this job"));
        ways.put("history", () -> over("More for this job", "What was saved"));
        ways.put("settings", () -> over("More for this job", "Settings"));
        ways.put("crew", () -> over("More for this job", "Settings", "The crew"));
        ways.put("reader", () -> {
            page.goTo("Wood");
            page.tap("Read it to me");
            page.until("return document.querySelector('dialog[open] .huge')");
        });
        ways.put("sheet", () -> {
            page.goTo("Papers");
            page.tapOn(".sheets li:first-child button");
            page.until("return document.querySelector('dialog[open] .lens svg')");
        });
        ways.put("jobs", () -> {
            page.tap("All jobs");
            page.until("return document.querySelector('.job img')?.complete");
        });
    }

    private void asked(String field, String seen) {
        page.goTo(PLACE);
        page.tapOn(Page.row(field));
        page.until("return document.querySelector(given[0])?.closest('[open]')", seen);
    }

    private void over(String... taps) {
        page.goTo(PLACE);
        for (String tap : taps) {
            page.tap(tap);
        }
        page.until(
                "return document.querySelector('dialog[open] #over-title')?.innerText.startsWith(given[0])",
                taps.length == 1 ? "Stair to" : taps[taps.length - 1]);
    }

    /** Looks at each in turn and leaves it again. */
    void each(Look look) throws Exception {
        for (Map.Entry<String, Step> view : ways.entrySet()) {
            view.getValue().go();
            look.at(view.getKey());
            while (page.has("dialog[open]")) {
                page.tapOn("dialog[open] .over-head button[aria-label]:last-child");
                page.untilGone("dialog[open]");
            }
        }
    }

    /** What is done at a view. */
    interface Look {
        void at(String view) throws Exception;
    }
}
