package pitchboard.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.web.guarding.StrictHeaders;

/** What is refused, and what every answer tells the browser. */
final class GuardingTest {
    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void open() throws Exception {
        desk = Desk.in(folder.resolve("data"));
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    /** DNS rebinding: a name of somebody else's that leads here. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "boats.example:PORT",
                "127.0.0.1.boats.example:PORT",
                "127.0.0.1",
                "localhost",
                "localhost:1",
                "127.0.0.2:PORT",
                "[::2]:PORT",
                "boats.example",
                "127.0.0.1:PORT@boats.example:PORT"
            })
    void another_name_than_its_own_is_refused_for_everything(String host) throws Exception {
        String sent = "Host: " + host.replace("PORT", Integer.toString(desk.port()));
        for (String path : new String[] {"/", "/api/jobs", "/page/index.html", "/api/live"}) {
            String answer = desk.raw("GET " + path + " HTTP/1.1", sent);
            assertThat(answer).matches("(?s)HTTP/1.1 40[03] .*").doesNotContain("sail loft");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:PORT", "localhost:PORT", "LOCALHOST:PORT", "[::1]:PORT"})
    void its_own_names_are_let_in(String host) throws Exception {
        String sent = "Host: " + host.replace("PORT", Integer.toString(desk.port()));
        assertThat(desk.raw("GET /api/jobs HTTP/1.1", sent)).startsWith("HTTP/1.1 200 ");
    }

    @Test
    void a_request_without_a_name_is_refused() throws Exception {
        assertThat(desk.raw("GET /api/jobs HTTP/1.1")).startsWith("HTTP/1.1 400 ");
        assertThat(desk.raw("GET /api/jobs HTTP/1.0")).startsWith("HTTP/1.1 403 ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # Origin                 | Sec-Fetch-Site | let in
            OWN                      | same-origin    | yes
            OWN                      | -              | yes
            -                        | same-origin    | yes
            -                        | -              | no
            null                     | -              | no
            https://boats.example    | -              | no
            https://boats.example    | cross-site     | no
            http://127.0.0.1:1       | same-site      | no
            http://localhost         | -              | no
            OWN                      | cross-site     | no
            OWN                      | same-site      | no
            """)
    void only_the_page_of_this_server_changes_anything(String origin, String site, String letIn) throws Exception {
        for (String method : new String[] {"POST", "PUT", "DELETE", "PATCH"}) {
            HttpRequest.Builder request = desk.to("/api/backup-none")
                    .method(method, BodyPublishers.ofString("{}"))
                    .header("Content-Type", "application/json");
            if (!origin.equals("-")) {
                request.header("Origin", origin.equals("OWN") ? desk.origin() : origin);
            }
            if (!site.equals("-")) {
                request.header("Sec-Fetch-Site", site);
            }
            assertThat(desk.send(request).status()).isEqualTo(letIn.equals("yes") ? 404 : 403);
        }
    }

    @ParameterizedTest
    @CsvSource({"cross-site, 403", "same-site, 403", "same-origin, 200", "none, 200"})
    void another_page_reads_no_jobs(String site, int status) throws Exception {
        assertThat(desk.send(desk.to("/api/jobs").header("Sec-Fetch-Site", site))
                        .status())
                .isEqualTo(status);
        assertThat(desk.send(desk.to("/").header("Sec-Fetch-Site", site)).status())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/page/../jobs.db",
                "/page/%2e%2e/jobs.db",
                "/page/..%2fjobs.db",
                "/page/..%2f..%2fdata%2fjobs.db",
                "/page/%2e%2e%2f%2e%2e%2fdata/jobs.db",
                "/page/....//jobs.db",
                "/page//etc/passwd",
                "/page/%00.js",
                "/page/..%5cjobs.db",
                "/page/app.js%00.png",
                "/page/look/../../demo/boathouse-loft.yaml",
                "/page/lib/../../pitchboard/web/Main.class",
                "/page/fonts/..%2f..%2fMain.class",
                "/engine/../page/app.js",
                "/page/package-info.class",
                "/page/",
                "/page",
                "/engine/",
                "/page/lib/",
                "/page/;x/app.js",
                "//etc/passwd",
                "/api/jobs/..%2f..%2fjobs.db/file",
                "/api/jobs/%2e%2e/file",
                "/api/jobs/a%2fb",
                "/META-INF/MANIFEST.MF",
                "/pitchboard/web/demo/boathouse-loft.yaml"
            })
    void no_path_leads_anywhere_else(String path) throws Exception {
        String answer = desk.raw("GET " + path + " HTTP/1.1", "Host: 127.0.0.1:" + desk.port());
        assertThat(answer).matches("(?s)HTTP/1.1 40[04] .*\\{\"problems\":\\[\\{.*");
        assertThat(answer)
                .contains("Content-Security-Policy: default-src 'none'")
                .doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/page/index.html",
                "/api/jobs",
                "/api/nothing",
                "/nothing",
                "/page/nothing.js",
                "/api/network",
                "/page/app.js",
                "/api/jobs/x/along.html"
            })
    void every_answer_is_strict(String path) throws Exception {
        Answer answer = desk.get(path);
        StrictHeaders.of(path).forEach((name, value) -> {
            if (!name.equals("Cache-Control")) {
                assertThat(answer.header(name)).as(path + " " + name).isEqualTo(value);
            }
        });
        assertThat(answer.header("Content-Security-Policy"))
                .isEqualTo("default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
                        + " font-src 'self' data:; connect-src 'self'; worker-src 'self'; manifest-src 'self';"
                        + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'");
        assertThat(answer.header("Server")).isEmpty();
        assertThat(answer.response().headers().allValues("Access-Control-Allow-Origin"))
                .isEmpty();
    }

    @Test
    void only_the_worker_of_the_engine_may_make_code() throws Exception {
        assertThat(desk.get("/page/engine-worker.js").header("Content-Security-Policy"))
                .isEqualTo("default-src 'none'; script-src 'self' 'unsafe-eval'; connect-src 'self'");
        assertThat(desk.get("/engine/nothing.js").header("Content-Security-Policy"))
                .isEqualTo("default-src 'none'; script-src 'self' 'unsafe-eval'; connect-src 'self'");
    }

    @Test
    void a_body_that_is_too_large_is_refused_in_an_answer_that_arrives() throws Exception {
        String file = "x".repeat(999_900);
        assertThat(desk.post("/api/jobs", "{\"file\":\"job: " + file + "\"}").status())
                .isEqualTo(201);
        assertThat(desk.post("/api/jobs", "{\"file\":\"job: " + file + "x".repeat(200) + "\"}")
                        .status())
                .isEqualTo(413);
        HttpRequest.Builder unannounced = desk.to("/api/jobs")
                .POST(BodyPublishers.fromPublisher(BodyPublishers.ofByteArray(new byte[3_000_000])))
                .header("Content-Type", "application/json")
                .header("Origin", desk.origin());
        assertThat(desk.send(unannounced).status()).isEqualTo(413);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {                                 | 400
            []                                | 400
            ""                                | 400
            {"base":1,"base":2,"job":{}}      | 400
            {"base":1,"job":null}             | 400
            {"base":1,"job":[]}               | 400
            {"base":1,"job":"x"}              | 400
            {"base":"one","job":{}}           | 400
            {"base":0,"job":{}}               | 400
            {"base":99999999999,"job":{}}     | 400
            {"base":1}                        | 400
            {"base":1,"job":{"a":"\\ud83d"}}  | 400
            {"base":7,"job":{}}               | 404
            """)
    void broken_json_is_refused_in_words(String body, int status) throws Exception {
        Answer refused = desk.put("/api/jobs/" + desk.example(), body);
        assertThat(refused.status()).isEqualTo(status);
        assertThat(refused.header("Content-Type")).isEqualTo("application/json;charset=utf-8");
        assertThat(refused.trouble()).isNotEmpty();
    }

    @Test
    void groups_in_groups_without_end_are_refused() throws Exception {
        String deep = "{\"a\":".repeat(5_000) + "1" + "}".repeat(5_000);
        assertThat(desk.put("/api/jobs/" + desk.example(), "{\"base\":1,\"job\":" + deep + "}")
                        .status())
                .isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "application/jsonx"})
    void what_a_plain_form_can_send_is_refused(String type) throws Exception {
        HttpRequest.Builder request = desk.to("/api/jobs")
                .POST(BodyPublishers.ofString("{\"from\":\"demo\"}"))
                .header("Content-Type", type)
                .header("Origin", desk.origin());
        assertThat(desk.send(request).status()).isEqualTo(415);
    }

    @Test
    void a_text_that_is_not_utf_8_is_refused() throws Exception {
        HttpRequest.Builder request = desk.to("/api/jobs")
                .POST(BodyPublishers.ofByteArray(new byte[] {'{', '"', (byte) 0xff, '"', ':', '1', '}'}))
                .header("Content-Type", "application/json")
                .header("Origin", desk.origin());
        assertThat(desk.send(request).trouble()).isEqualTo("the text is not UTF-8");
    }

    @Test
    void there_are_only_so_many_jobs() throws Exception {
        Settings.Limits few = new Settings.Limits(2, 1_000, 1_000);
        try (Desk small = Desk.of(new Settings(0, folder.resolve("few"), false, few, Clock.systemUTC()))) {
            assertThat(small.post("/api/jobs", "{\"from\":\"blank\"}").status()).isEqualTo(201);
            Answer full = small.post("/api/jobs", "{\"from\":\"blank\"}");
            assertThat(full.status()).isEqualTo(507);
            assertThat(full.trouble()).startsWith("there are 2 jobs already");
            assertThat(small.post("/api/jobs/" + small.example() + "/copy", "{}")
                            .status())
                    .isEqualTo(507);
        }
    }

    @Test
    void there_are_only_so_many_requests_a_second() throws Exception {
        Settings.Limits slow = new Settings.Limits(10, 2, 2);
        try (Desk busy = Desk.of(new Settings(0, folder.resolve("busy"), false, slow, Clock.systemUTC()))) {
            for (int i = 0; i < 4; i++) {
                assertThat(busy.get("/").status()).isEqualTo(200);
            }
            Answer refused = busy.get("/");
            assertThat(refused.status()).isEqualTo(429);
            assertThat(refused.header("Retry-After")).isEqualTo("1");
        }
    }

    @Test
    void a_file_is_sent_again_only_when_it_changed_and_small_when_that_is_possible() throws Exception {
        Answer whole = desk.get("/page/lib/lit-html.js");
        Answer zipped = desk.send(desk.to("/page/lib/lit-html.js").header("Accept-Encoding", "br, gzip"));
        assertThat(zipped.header("Content-Encoding")).isEqualTo("gzip");
        assertThat(zipped.bytes().length).isLessThan(whole.bytes().length / 2);
        assertThat(zipped.header("ETag")).isNotEqualTo(whole.header("ETag"));
        assertThat(whole.header("Cache-Control")).isEqualTo("no-cache");
        assertThat(whole.header("Vary")).isEqualTo("Accept-Encoding");
        Answer again = desk.send(desk.to("/page/lib/lit-html.js").header("If-None-Match", whole.header("ETag")));
        assertThat(again.status()).isEqualTo(304);
        assertThat(again.bytes()).isEmpty();
        Answer refused = desk.send(desk.to("/page/lib/lit-html.js").header("Accept-Encoding", "gzip;q=0"));
        assertThat(refused.header("Content-Encoding")).isEmpty();
    }

    @Test
    void the_page_the_library_that_draws_and_the_type_are_there() throws Exception {
        assertThat(desk.get("/").body()).isEqualTo(desk.get("/page/index.html").body());
        for (String name : new String[] {
            "lit-html",
            "directive",
            "directives/repeat",
            "directives/live",
            "directives/unsafe-svg",
            "directives/unsafe-html",
            "directives/keyed",
            "directive-helpers"
        }) {
            assertThat(desk.get("/page/lib/" + name + ".js").header("Content-Type"))
                    .as(name)
                    .isEqualTo("text/javascript; charset=utf-8");
        }
        assertThat(desk.get("/page/fonts/ArchivoNarrow-Regular.ttf").header("Content-Type"))
                .isEqualTo("font/ttf");
    }
}
