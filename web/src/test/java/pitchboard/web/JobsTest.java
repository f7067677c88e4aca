package pitchboard.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.documents.json.Json;

/** Jobs: listed, made, brought, saved, copied, put away, gone back. */
final class JobsTest {
    private static final Path LOFT = Path.of("../examples/boathouse-loft.yaml");

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() throws Exception {
        desk = Desk.in(folder.resolve("new/data"));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static String save(int base, String job) {
        return "{\"base\":" + base + ",\"job\":" + job + "}";
    }

    @Test
    void a_fresh_machine_shows_the_example() throws Exception {
        Answer list = desk.get("/api/jobs");
        assertThat(list.status()).isEqualTo(200);
        assertThat(list.text("jobs")).isEqualTo("a list of 1");
        assertThat(list.text("jobs", "1", "name")).isEqualTo("Stair to the sail loft");
        assertThat(list.text("jobs", "1", "place")).isEqualTo("boathouse, east gable");
        assertThat(list.text("jobs", "1", "archived")).isEqualTo("false");
        Answer job = desk.get("/api/jobs/" + desk.example());
        assertThat(job.text("job", "measured", "rise")).isEqualTo("8' 9 3/4\"");
        assertThat(job.body()).doesNotContain("changes").doesNotContain("null");
    }

    @Test
    void a_file_comes_back_byte_for_byte_until_the_job_is_changed() throws Exception {
        String file = Files.readString(LOFT)
                .replace("Heron Lake", "\ufeff H\u00e9ron \"Lake\" \ud83d\ude80 <b>")
                .replace("\n", "\r\n");
        String id = desk.bring(file);
        Answer given = desk.get("/api/jobs/" + id + "/file");
        assertThat(given.bytes()).isEqualTo(file.getBytes(UTF_8));
        assertThat(given.header("Content-Disposition"))
                .isEqualTo(
                        "attachment; filename=\"Stair to the sail loft.yaml\"; filename*=UTF-8''Stair%20to%20the%20sail%20loft.yaml");
        String job = Json.words("x").text();
        assertThat(desk.put("/api/jobs/" + id, save(1, "{\"job\":" + job + "}")).text("version"))
                .isEqualTo("2");
        assertThat(desk.get("/api/jobs/" + id + "/file").body()).isEqualTo("job: x\n");
        assertThat(desk.get("/api/jobs/" + id + "/file?version=1").bytes()).isEqualTo(file.getBytes(UTF_8));
    }

    @Test
    void a_json_file_comes_back_byte_for_byte_too() throws Exception {
        String file = "{\n  \"job\": \"Dock\"\n}\n";
        Answer given = desk.get("/api/jobs/" + desk.bring(file) + "/file");
        assertThat(given.body()).isEqualTo(file);
        assertThat(given.header("Content-Disposition")).contains("Dock.json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"job: [", "- a\n- b\n", "", "{\"job\": 1,}", "a: &x 1\n"})
    void what_is_no_job_file_is_refused_with_the_place(String file) throws Exception {
        Answer refused = desk.post("/api/jobs", Json.object().says("file", file).text());
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.trouble()).contains("line 1", "expected");
        assertThat(desk.get("/api/jobs").text("jobs")).isEqualTo("a list of 1");
    }

    @Test
    void the_local_changes_of_a_file_come_with_it() throws Exception {
        String changes = "rulebook: IRC 2021\n";
        Answer made = desk.post(
                "/api/jobs",
                Json.object().says("file", "job: x\n").says("changes", changes).text());
        assertThat(made.status()).isEqualTo(201);
        assertThat(desk.get("/api/jobs/" + made.text("id")).text("changes", "rulebook"))
                .isEqualTo("IRC 2021");
    }

    @Test
    void a_blank_job_is_empty_and_the_example_can_be_had_again() throws Exception {
        String blank = desk.post("/api/jobs", "{\"from\":\"blank\"}").text("id");
        assertThat(desk.get("/api/jobs/" + blank).body()).contains("\"job\":{}");
        assertThat(desk.get("/api/jobs/" + blank + "/file").status()).isEqualTo(200);
        assertThat(desk.post("/api/jobs", "{\"from\":\"demo\"}").status()).isEqualTo(201);
        assertThat(desk.post("/api/jobs", "{\"from\":\"elsewhere\"}").status()).isEqualTo(400);
        assertThat(desk.get("/api/jobs").text("jobs")).isEqualTo("a list of 3");
    }

    @Test
    void saving_the_same_again_adds_no_version() throws Exception {
        String id = desk.example();
        String job = written(desk.get("/api/jobs/" + id));
        assertThat(desk.put("/api/jobs/" + id, save(1, job)).text("version")).isEqualTo("1");
        assertThat(desk.get("/api/jobs/" + id + "/versions").text("versions")).isEqualTo("a list of 1");
    }

    private static String written(Answer job) {
        String body = job.body();
        return body.substring(body.indexOf("\"job\":{") + 6, body.length() - 1);
    }

    @Test
    void whoever_is_behind_gets_both_sides_and_nothing_is_lost() throws Exception {
        String id = desk.bring("job: first\n");
        desk.put("/api/jobs/" + id, save(1, "{\"job\":\"theirs\"}"));
        Answer behind = desk.put("/api/jobs/" + id, save(1, "{\"job\":\"mine\"}"));
        assertThat(behind.status()).isEqualTo(409);
        assertThat(behind.text("version")).isEqualTo("2");
        assertThat(behind.text("job", "job")).isEqualTo("theirs");
        assertThat(behind.text("base", "job")).isEqualTo("first");
        assertThat(desk.put("/api/jobs/" + id, save(2, "{\"job\":\"both\"}")).text("version"))
                .isEqualTo("3");
        Answer versions = desk.get("/api/jobs/" + id + "/versions");
        assertThat(versions.text("versions", "1", "version")).isEqualTo("3");
        assertThat(versions.text("versions", "3", "note")).isEqualTo("taken in from a file");
        assertThat(versions.text("versions", "3", "device")).isEqualTo("this computer");
        assertThat(desk.get("/api/jobs/" + id + "/versions/2").text("job", "job"))
                .isEqualTo("theirs");
    }

    @Test
    void going_back_makes_a_new_version_like_the_old_one() throws Exception {
        String id = desk.bring("job: first # so far\n");
        desk.put("/api/jobs/" + id, save(1, "{\"job\":\"second\"}"));
        assertThat(desk.post("/api/jobs/" + id + "/restore", "{\"version\":1}").text("version"))
                .isEqualTo("3");
        assertThat(desk.get("/api/jobs/" + id + "/file").body()).isEqualTo("job: first # so far\n");
        assertThat(desk.get("/api/jobs/" + id + "/versions").text("versions", "1", "note"))
                .isEqualTo("as it was in version 1");
        assertThat(desk.post("/api/jobs/" + id + "/restore", "{\"version\":9}").status())
                .isEqualTo(404);
    }

    @Test
    void a_copy_is_a_job_of_its_own() throws Exception {
        String id = desk.example();
        Answer copy = desk.post("/api/jobs/" + id + "/copy", "{}");
        assertThat(copy.status()).isEqualTo(201);
        desk.put("/api/jobs/" + copy.text("id"), save(1, "{\"job\":\"other\"}"));
        assertThat(desk.get("/api/jobs/" + id).text("version")).isEqualTo("1");
    }

    @Test
    void what_is_put_away_is_listed_only_when_asked_for() throws Exception {
        String id = desk.example();
        desk.post("/api/jobs/" + id + "/archive", "{\"archived\":true}");
        assertThat(desk.get("/api/jobs").text("jobs")).isEqualTo("a list of 0");
        assertThat(desk.get("/api/jobs?archived=yes").text("jobs", "1", "id")).isEqualTo(id);
        desk.post("/api/jobs/" + id + "/archive", "{\"archived\":false}");
        assertThat(desk.get("/api/jobs").text("jobs")).isEqualTo("a list of 1");
    }

    @Test
    void a_search_looks_at_name_and_place() throws Exception {
        desk.bring("job: D\u00fcne\nplace: north pier\n");
        assertThat(desk.get("/api/jobs?search=PIER%20dune").text("jobs", "1", "name"))
                .isEqualTo("D\u00fcne");
        assertThat(desk.get("/api/jobs?search=gable").text("jobs")).isEqualTo("a list of 1");
        assertThat(desk.get("/api/jobs?search=%25%27").text("jobs")).isEqualTo("a list of 0");
    }

    @Test
    void ticks_are_kept_until_they_are_taken_back() throws Exception {
        String ticks = "/api/jobs/" + desk.example() + "/ticks";
        desk.put(ticks, "{\"tick\":\"mark 3\",\"done\":true}");
        desk.put(ticks, "{\"tick\":\"piece A \\\"<\",\"done\":true}");
        desk.put(ticks, "{\"tick\":\"mark 3\",\"done\":true}");
        assertThat(desk.get(ticks).body()).isEqualTo("{\"ticks\":[\"mark 3\",\"piece A \\\"<\"]}");
        desk.put(ticks, "{\"tick\":\"mark 3\",\"done\":false}");
        assertThat(desk.get(ticks).body()).isEqualTo("{\"ticks\":[\"piece A \\\"<\"]}");
        assertThat(desk.put(ticks, "{\"tick\":\"" + "x".repeat(81) + "\",\"done\":true}")
                        .status())
                .isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/versions",
                "/versions/1",
                "/versions/0",
                "/versions/x",
                "/ticks",
                "/file",
                "/papers.pdf",
                "/papers/plan.pdf",
                "/picture.svg",
                "/along.html"
            })
    void a_job_that_is_not_there_is_not_there(String rest) throws Exception {
        Answer answer = desk.get("/api/jobs/nosuchjob1" + rest);
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.trouble()).startsWith("there is no such");
    }

    @Test
    void a_job_that_is_not_there_cannot_be_changed() throws Exception {
        assertThat(desk.put("/api/jobs/nosuchjob1", save(1, "{}")).status()).isEqualTo(404);
        assertThat(desk.post("/api/jobs/nosuchjob1/copy", "{}").status()).isEqualTo(404);
        assertThat(desk.post("/api/jobs/nosuchjob1/archive", "{\"archived\":true}")
                        .status())
                .isEqualTo(404);
        assertThat(desk.put("/api/jobs/nosuchjob1/ticks", "{\"tick\":\"a\",\"done\":true}")
                        .status())
                .isEqualTo(404);
        assertThat(desk.put("/api/jobs/nosuchjob1/ticks", "{\"tick\":\"a\",\"done\":false}")
                        .status())
                .isEqualTo(404);
    }

    @Test
    void everything_is_there_again_after_a_restart() throws Exception {
        String id = desk.bring("job: kept\n");
        desk.put("/api/jobs/" + id, save(1, "{\"job\":\"kept well\"}"));
        desk.put("/api/jobs/" + id + "/ticks", "{\"tick\":\"mark 1\",\"done\":true}");
        desk.post(
                "/api/jobs/" + desk.get("/api/jobs?search=sail").text("jobs", "1", "id") + "/archive",
                "{\"archived\":true}");
        desk.close();
        desk = Desk.in(folder.resolve("new/data"));
        assertThat(desk.get("/api/jobs").text("jobs", "1", "name")).isEqualTo("kept well");
        assertThat(desk.get("/api/jobs").text("jobs")).isEqualTo("a list of 1");
        assertThat(desk.get("/api/jobs/" + id + "/versions").text("versions")).isEqualTo("a list of 2");
        assertThat(desk.get("/api/jobs/" + id + "/ticks").body()).contains("mark 1");
    }

    @Test
    void a_backup_is_a_library_of_its_own_with_everything_in_it() throws Exception {
        String id = desk.bring("job: kept\n");
        Answer backup = desk.post("/api/backup", "{}");
        Path file = Path.of(backup.text("file"));
        assertThat(file).hasParent(folder.resolve("new/data/backups"));
        assertThat(Files.size(file)).isEqualTo(Long.parseLong(backup.text("bytes")));
        desk.bring("job: later\n");
        Path other = Files.createDirectories(folder.resolve("other"));
        Files.copy(file, other.resolve("jobs.db"));
        try (Desk again = Desk.in(other)) {
            assertThat(again.get("/api/jobs").text("jobs")).isEqualTo("a list of 2");
            assertThat(again.get("/api/jobs/" + id).text("job", "job")).isEqualTo("kept");
        }
    }
}
