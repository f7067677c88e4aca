package pitchboard.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The engine as it was compiled for the browser: handed out, and put into the page to take along. */
@Tag("with-the-engine")
final class EngineServedTest {
    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void open() throws Exception {
        desk = Desk.in(folder);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @Test
    void all_its_parts_are_there() throws Exception {
        assertThat(desk.get("/engine/engine.js").header("Content-Type")).startsWith("text/javascript");
        assertThat(desk.get("/engine/engine-runtime.js").header("Content-Type")).startsWith("text/javascript");
        Answer wasm = desk.get("/engine/engine.wasm");
        assertThat(wasm.header("Content-Type")).isEqualTo("application/wasm");
        assertThat(wasm.bytes()).startsWith(0, 'a', 's', 'm');
        assertThat(wasm.header("Content-Security-Policy")).contains("'unsafe-eval'");
    }

    @Test
    void the_page_to_take_along_holds_page_engine_and_job_and_asks_for_nothing() throws Exception {
        String id = desk.bring("job: \"Dock </script><!-- <b> \\u2028 \ud83d\ude80\"\n");
        Answer along = desk.get("/api/jobs/" + id + "/along.html");
        assertThat(along.header("Content-Disposition")).startsWith("attachment; filename=\"Dock script !-- b");
        String page = along.body();
        assertThat(page)
                .doesNotContain("src=\"/")
                .doesNotContain("href=\"/")
                .doesNotContain("url('/")
                .doesNotContain("Dock </script>")
                .contains("\"name\":\"Dock \\u003c/script>\\u003c!-- \\u003cb> \\u2028 \ud83d\ude80\"");
        Matcher wasm = Pattern.compile("data-file=\"engine.wasm\">([^<]+)<").matcher(page);
        assertThat(wasm.find()).isTrue();
        assertThat(Base64.getDecoder().decode(wasm.group(1)))
                .isEqualTo(desk.get("/engine/engine.wasm").bytes());
        assertThat(page).contains("data-file=\"engine.js\"", "data-file=\"engine-runtime.js\"", "\"engine-worker.js\"");
    }

    @Test
    void the_browser_is_told_every_file_to_keep_and_each_is_there() throws Exception {
        Answer worker = desk.get("/page-worker.js");
        assertThat(worker.header("Content-Type")).startsWith("text/javascript");
        Matcher list = Pattern.compile("(?m)^const FILES = \\[\"(.*)\"\\];$").matcher(worker.body());
        assertThat(list.find()).isTrue();
        String[] files = list.group(1).split("\",\"");
        assertThat(files)
                .contains("/", "/page/app.js", "/page/fonts/ArchivoNarrow-Bold.ttf", "/page/lib/lit-html.js")
                .contains("/engine/engine.wasm", "/page/engine-worker.js", "/page/manifest.webmanifest");
        for (String file : files) {
            assertThat(desk.get(file).status()).as(file).isEqualTo(200);
        }
    }
}
