package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.store.FileTrouble;
import pitchboard.store.FileTrouble.Kind;
import pitchboard.store.Notation;

/** A library of every version that was ever released can be opened, and nothing in it gets lost. */
final class MigrationTest {
    private static final String COLUMN = "alter table job add column colour text;";
    private static final String BROKEN = "create table half (x text) strict; insert into nowhere values (1);";

    @TempDir
    Path folder;

    static IntStream everyReleasedVersion() {
        return IntStream.rangeClosed(1, Schema.RELEASED.newest());
    }

    @ParameterizedTest
    @MethodSource("everyReleasedVersion")
    void a_library_of_a_released_version_opens_with_all_it_had(int version) throws Exception {
        Path file = kept(version);
        try (JobLibrary library = JobLibrary.open(file, Crew.clock())) {
            assertThat(version(library)).isEqualTo(Schema.RELEASED.newest());
            assertThat(library.check()).isEmpty();
            assertThat(library.list(Crew.all()))
                    .containsExactly(new Job.Line(
                            "loft000001", "Stair to the \"sail\" loft", "boathouse; it's 'east'", 2, at(2000), false));
            assertThat(library.list(new Search("isik", Search.Shelf.ARCHIVED, 5)))
                    .containsExactly(new Job.Line("porch00001", "IŞIK", "", 1, at(3000), true));
            Draft first = new Draft(new Wording(Notation.YAML, "job: Loft\n"), Optional.empty(), "Loft", "");
            Draft second = new Draft(
                    new Wording(Notation.JSON, "{\"job\":\"Stair to the \\\"sail\\\" loft\"}"),
                    Optional.of(new Wording(Notation.YAML, "# it's local\n")),
                    "Stair to the \"sail\" loft",
                    "boathouse; it's 'east'");
            assertThat(library.findVersion("loft000001", 1))
                    .contains(new Job("loft000001", false, new Version(1, at(1000), new By("Phone", ""), first)));
            assertThat(library.findNewest("loft000001"))
                    .contains(new Job("loft000001", false, new Version(2, at(2000), new By("Desk", "east"), second)));
            assertThat(library.ticks().of("loft000001")).containsExactly(new Tick("mark 3", at(4000)));
            assertThat(library.devices().list())
                    .containsExactly(
                            new Device("device0001", "Phone", at(5000), at(6000), Optional.empty()),
                            new Device("device0002", "Old phone", at(5000), at(6000), Optional.of(at(7000))));
            assertThat(library.devices().findLetIn("5f1e")).map(Device::id).contains("device0001");
            assertThat(library.save("loft000001", 2, Crew.draft("job: now\n"), Crew.PHONE))
                    .isInstanceOf(Saving.Saved.class);
        }
    }

    /** Fails when a released step is edited, and when a step makes an old library other than a new one. */
    @ParameterizedTest
    @MethodSource("everyReleasedVersion")
    void an_old_library_becomes_what_a_new_one_is(int version) throws Exception {
        try (JobLibrary old = JobLibrary.open(kept(version), Crew.clock());
                JobLibrary fresh = JobLibrary.open(folder.resolve("fresh.db"), Crew.clock())) {
            assertThat(form(old)).isEqualTo(form(fresh)).hasSizeGreaterThan(4);
        }
    }

    @Test
    void steps_are_gone_one_after_the_other() throws FileTrouble {
        Job job;
        try (JobLibrary library = Crew.library(folder)) {
            job = library.create(Crew.draft("job: a\n"), Crew.PHONE);
        }
        try (JobLibrary library = with(COLUMN, "update job set colour = 'oak';")) {
            assertThat(version(library)).isEqualTo(3);
            assertThat(library.database()
                            .<List<String>>read(
                                    session -> session.rows("select colour from job", row -> row.getString(1))))
                    .containsExactly("oak");
            assertThat(library.findNewest(job.id())).contains(job);
        }
    }

    @Test
    void a_step_that_fails_leaves_the_library_before_it() throws FileTrouble {
        Job job;
        try (JobLibrary library = Crew.library(folder)) {
            job = library.create(Crew.draft("job: a\n"), Crew.PHONE);
        }
        assertThatThrownBy(() -> with(COLUMN, BROKEN)).isInstanceOf(FileTrouble.class);
        try (JobLibrary library = with(COLUMN)) {
            assertThat(version(library)).isEqualTo(2);
            assertThat(form(library)).noneMatch(line -> line.contains("half"));
            assertThat(library.findNewest(job.id())).contains(job);
        }
    }

    @Test
    void a_library_of_a_newer_version_is_refused_and_left_alone() throws IOException, FileTrouble {
        with(COLUMN).close();
        Path file = folder.resolve("jobs.db");
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> Crew.library(folder))
                .isInstanceOf(FileTrouble.class)
                .hasMessage(
                        file + ": it was written by a newer Pitchboard (form 2, and this one knows 1), and it is left"
                                + " as it is: open it with the newer Pitchboard")
                .extracting(trouble -> ((FileTrouble) trouble).kind())
                .isEqualTo(Kind.NOT_UNDERSTOOD);
        assertThat(file).hasBinaryContent(before);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    private JobLibrary with(String... steps) throws FileTrouble {
        List<String> all = new ArrayList<>(Schema.RELEASED.steps());
        all.addAll(List.of(steps));
        return JobLibrary.open(folder.resolve("jobs.db"), Crew.clock(), new Schema(all), 1000);
    }

    /** The library as a program of that version left it. */
    private Path kept(int version) throws IOException, SQLException {
        Path file = folder.resolve("version-" + version + ".db");
        try (InputStream in = MigrationTest.class.getResourceAsStream("library-" + version + ".sql");
                Session session = Session.open(file)) {
            session.script(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return file;
    }

    private static int version(JobLibrary library) throws FileTrouble {
        return library.database().read(Schema::version);
    }

    private static List<String> form(JobLibrary library) throws FileTrouble {
        return library.database()
                .read(session -> session.rows(
                        "select sql from sqlite_schema where sql is not null order by type, name",
                        row -> row.getString(1).replaceAll("--.*", "").replaceAll("\\s+", " ")));
    }

    private static Instant at(long milliseconds) {
        return Instant.ofEpochMilli(1_800_000_000_000L + milliseconds);
    }
}
