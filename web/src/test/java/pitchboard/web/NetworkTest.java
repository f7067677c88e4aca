package pitchboard.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.documents.json.Json;
import pitchboard.web.network.OwnAddresses;

/** The crew's network. The device is this machine under its address in the network; without one there is none to try. */
final class NetworkTest {
    @TempDir
    Path folder;

    private Desk desk;
    private String outside;

    @BeforeEach
    void open() throws Exception {
        List<String> addresses = OwnAddresses.find();
        Assumptions.assumeFalse(addresses.isEmpty(), "this machine is in no network");
        desk = Desk.of(Settings.of(0, folder).shared());
        outside = "http://" + addresses.get(0) + ":" + desk.port();
    }

    @AfterEach
    void close() {
        if (desk != null) {
            desk.close();
        }
    }

    private Answer ask(String method, String path, String key, String body) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(outside + path))
                .method(method, BodyPublishers.ofString(body))
                .header("Content-Type", "application/json");
        if (!method.equals("GET")) {
            request.header("Origin", outside);
        }
        if (!key.isEmpty()) {
            request.header("Cookie", key);
        }
        return desk.send(request);
    }

    private String code() throws Exception {
        return desk.post("/api/network/code", "{}").text("code");
    }

    private Answer pair(String code) throws Exception {
        return ask(
                "POST",
                "/api/pair",
                "",
                Json.object()
                        .says("code", code)
                        .says("name", "Mira's phone <b>")
                        .text());
    }

    /** As the device sends it from now on. */
    private String key() throws Exception {
        String cookie = pair(code()).header("Set-Cookie");
        return cookie.substring(0, cookie.indexOf(';'));
    }

    @Test
    void a_server_that_is_not_shared_does_not_answer_the_network() throws Exception {
        try (Desk alone = Desk.in(folder.resolve("alone"))) {
            HttpRequest.Builder request =
                    HttpRequest.newBuilder(URI.create(outside.replaceAll(":[0-9]+$", ":" + alone.port()) + "/"));
            assertThat(catchThrowable(() -> desk.send(request))).isInstanceOf(IOException.class);
            Answer network = alone.get("/api/network");
            assertThat(network.text("shared")).isEqualTo("false");
            assertThat(network.text("address")).isEqualTo(alone.address());
            assertThat(network.text("statement")).startsWith("Only this computer");
            assertThat(alone.post("/api/network/code", "{}").status()).isEqualTo(409);
        }
    }

    @Test
    void a_stranger_gets_the_page_and_nothing_of_anybodys() throws Exception {
        assertThat(ask("GET", "/", "", "").status()).isEqualTo(200);
        for (String path : List.of("/api/jobs", "/api/live", "/api/network", "/api/devices", "/api/nothing")) {
            assertThat(ask("GET", path, "", "").status()).as(path).isEqualTo(401);
            assertThat(ask("GET", path, "pitchboard-device=" + "A".repeat(43), "")
                            .status())
                    .isEqualTo(401);
        }
        assertThat(ask("POST", "/api/jobs", "", "{\"from\":\"demo\"}").status()).isEqualTo(401);
        assertThat(desk.get("/api/jobs").text("jobs")).isEqualTo("a list of 1");
    }

    @Test
    void a_code_lets_one_device_in_and_its_key_is_kept_from_scripts() throws Exception {
        Answer shown = desk.post("/api/network/code", "{}");
        assertThat(shown.text("code")).matches("[2-9A-HJ-NP-Z]{4}-[2-9A-HJ-NP-Z]{4}");
        assertThat(shown.text("address"))
                .isEqualTo(outside + "/#pair/" + shown.text("code").replace("-", ""));
        assertThat(shown.text("svg")).startsWith("<svg ");
        Answer paired = pair(shown.text("code").toLowerCase(Locale.ROOT).replace("-", " "));
        assertThat(paired.status()).isEqualTo(200);
        assertThat(paired.header("Set-Cookie"))
                .matches("pitchboard-device=[\\w-]{43}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict");
        assertThat(pair(shown.text("code")).status()).isEqualTo(403);
    }

    @Test
    void a_paired_device_works_on_jobs_under_its_name() throws Exception {
        String key = key();
        String id = ask("POST", "/api/jobs", key, "{\"from\":\"blank\"}").text("id");
        assertThat(ask("GET", "/api/jobs/" + id + "/versions", key, "").text("versions", "1", "device"))
                .isEqualTo("Mira's phone <b>");
        assertThat(ask("GET", "/api/network", key, "").text("statement")).contains("not encrypted");
        for (String own : List.of("/api/backup", "/api/network/code")) {
            assertThat(ask("POST", own, key, "{}").status()).as(own).isEqualTo(403);
        }
        assertThat(ask("GET", "/api/devices", key, "").status()).isEqualTo(403);
        assertThat(ask("DELETE", "/api/devices/x", key, "").status()).isEqualTo(403);
    }

    @Test
    void a_revoked_device_is_a_stranger_again_also_after_a_restart() throws Exception {
        String key = key();
        String other = key();
        String id = desk.get("/api/devices").text("devices", "1", "id");
        assertThat(desk.send("DELETE", "/api/devices/" + id, "").status()).isEqualTo(200);
        assertThat(desk.send("DELETE", "/api/devices/" + id, "").status()).isEqualTo(404);
        assertThat(ask("GET", "/api/jobs", key, "").status()).isEqualTo(401);
        assertThat(desk.get("/api/devices").text("devices")).isEqualTo("a list of 1");
        desk.close();
        desk = Desk.of(Settings.of(0, folder).shared());
        outside = outside.replaceAll(":[0-9]+$", ":" + desk.port());
        assertThat(ask("GET", "/api/jobs", key, "").status()).isEqualTo(401);
        assertThat(ask("GET", "/api/jobs", other, "").status()).isEqualTo(200);
    }

    @Test
    void a_code_is_used_up_by_a_few_mistakes() throws Exception {
        String code = code();
        for (int i = 0; i < 5; i++) {
            assertThat(pair("22222222").status()).isEqualTo(403);
        }
        assertThat(pair(code).status()).isEqualTo(403);
        assertThat(desk.get("/api/devices").text("devices")).isEqualTo("a list of 0");
    }

    @Test
    void no_key_is_kept_where_somebody_could_read_it() throws Exception {
        String key = key().replace("pitchboard-device=", "");
        desk.close();
        try (var files = Files.walk(folder)) {
            assertThat(files.filter(Files::isRegularFile))
                    .isNotEmpty()
                    .allSatisfy(file -> assertThat(new String(Files.readAllBytes(file), ISO_8859_1))
                            .doesNotContain(key));
        }
    }

    @Test
    void another_name_is_refused_on_the_network_too() throws Exception {
        assertThat(desk.raw("GET / HTTP/1.1", "Host: boats.example:" + desk.port()))
                .startsWith("HTTP/1.1 403 ");
    }
}
