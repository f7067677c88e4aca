package pitchboard.web.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Judges a page by what of WCAG 2.2, levels A and AA, a machine can judge: the rules of axe-core, from the jar of the
 * same makers.
 */
final class Axe {
    private static final String JUDGE = "const found = await axe.run(document, { resultTypes: ['violations'], runOnly:"
            + " ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });"
            + "return found.violations.flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) =>"
            + " `${id} at ${target}: ${failureSummary}`));";

    private final String script;

    Axe() throws IOException {
        try (InputStream file = Axe.class.getResourceAsStream("/axe.min.js")) {
            script = new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What is wrong with the page as it is now. */
    List<String> violations(Page page) {
        page.until("return document.getAnimations().every(one => one.playState === 'finished')");
        if (!(boolean) page.run("return 'axe' in window")) {
            page.driver().executeScript(script);
        }
        return ((List<?>) page.run(JUDGE)).stream().map(String::valueOf).toList();
    }
}
