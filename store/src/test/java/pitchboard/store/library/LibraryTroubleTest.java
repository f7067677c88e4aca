package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assumptions.assumeThat;
import static pitchboard.store.library.Crew.PHONE;
import static pitchboard.store.library.Crew.draft;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;
import pitchboard.store.FileTrouble.Kind;

/** Whatever stands in the way is said in one sentence with what to do, and nothing that was saved is touched. */
final class LibraryTroubleTest {
    private static final Draft LARGE = draft("job: b\n" + "# a long thought\n".repeat(20_000));

    @TempDir
    Path folder;

    @Test
    void a_full_disk_is_told_and_saving_goes_on_when_there_is_room_again() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            Job job = library.create(draft("job: a\n"), PHONE);
            library.database()
                    .<Integer>write(session ->
                            session.number("pragma max_page_count = " + session.number("pragma page_count")));
            assertTrouble(
                    () -> library.save(job.id(), 1, LARGE, PHONE),
                    Kind.NO_ROOM,
                    folder.resolve("jobs.db")
                            + ": the disk is full, so this was not saved; all that was saved before is"
                            + " kept. Make room on the disk, then save again");
            assertThat(library.findNewest(job.id())).contains(job);
            assertThat(library.check()).isEmpty();
            // After trouble the library opens the file anew, and the limit of this test went with the old connection.
            assertThat(library.save(job.id(), 1, LARGE, PHONE)).isInstanceOf(Saving.Saved.class);
        }
    }

    @Test
    void a_file_that_has_become_read_only_is_told_and_still_read() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            Job job = library.create(draft("job: a\n"), PHONE);
            assertTrouble(
                    () -> library.database().<Integer>write(session -> {
                        session.run("pragma query_only = on");
                        return session.run("delete from tick");
                    }),
                    Kind.NO_PERMISSION,
                    folder.resolve("jobs.db") + ": nothing can be written there: give yourself permission to write the"
                            + " file and its folder, or keep the jobs in another folder");
            assertThat(library.findNewest(job.id())).contains(job);
        }
    }

    /** Not even root may put a file there. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_folder_that_takes_no_file_is_told() {
        assertTrouble(
                () -> JobLibrary.open(Path.of("/sys/jobs.db"), Crew.clock()),
                Kind.NO_PERMISSION,
                "/sys/jobs.db: nothing can be written there");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_read_only_folder_or_file_is_told() throws IOException, FileTrouble {
        Crew.library(folder).close();
        Path file = folder.resolve("jobs.db");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assumeThat(Files.isWritable(file)).as("root may write everywhere").isFalse();
        assertTrouble(() -> Crew.library(folder), Kind.NO_PERMISSION, file + ": nothing can be written there");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-rw-"));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assertTrouble(() -> Crew.library(folder), Kind.NO_PERMISSION, file + ": nothing can be written there");
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
        }
    }

    @Test
    void another_program_that_writes_for_too_long_is_told() throws Exception {
        try (JobLibrary library = JobLibrary.open(folder.resolve("jobs.db"), Crew.clock(), Schema.RELEASED, 50);
                Session other = Session.open(folder.resolve("jobs.db"))) {
            other.run("begin immediate");
            assertTrouble(
                    () -> library.create(draft("job: a\n"), PHONE),
                    Kind.BUSY,
                    folder.resolve("jobs.db") + ": another program has been writing in it for too long: close that"
                            + " program, or try again");
            assertThat(library.count()).isZero();
            other.run("rollback");
            library.create(draft("job: a\n"), PHONE);
            assertThat(library.count()).isEqualTo(1);
        }
    }

    @Test
    void a_file_of_another_kind_is_refused_and_left_alone() throws Exception {
        Path text = Files.writeString(folder.resolve("jobs.db"), "job: Stair to the sail loft\n".repeat(100));
        byte[] before = Files.readAllBytes(text);
        assertTrouble(
                () -> Crew.library(folder),
                Kind.NOT_UNDERSTOOD,
                text + ": this is no library of jobs, and it is left as it is: move it away, or name another file");
        assertThat(text).hasBinaryContent(before);
        assertOnly(text);
    }

    @Test
    void a_database_of_another_program_is_refused_and_left_alone() throws Exception {
        Path file = folder.resolve("jobs.db");
        for (String version : new String[] {"0", "1", "7"}) {
            Files.deleteIfExists(file);
            try (Session other = Session.open(file)) {
                other.script("create table songs (name text); pragma user_version = " + version);
            }
            byte[] before = Files.readAllBytes(file);
            assertTrouble(() -> Crew.library(folder), Kind.NOT_UNDERSTOOD, file + ": this is no library of jobs");
            assertThat(file).hasBinaryContent(before);
            assertOnly(file);
        }
    }

    @Test
    void an_empty_file_becomes_a_library() throws IOException, FileTrouble {
        Files.createFile(folder.resolve("jobs.db"));
        try (JobLibrary library = Crew.library(folder)) {
            assertThat(library.check()).isEmpty();
        }
    }

    @Test
    void a_damaged_library_is_told() throws IOException, FileTrouble {
        Path file = folder.resolve("jobs.db");
        String id;
        try (JobLibrary library = Crew.library(folder)) {
            id = library.create(LARGE, PHONE).id();
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            // All pages but the first, which says what is where.
            String rust = "rust".repeat((int) (channel.size() - 4096) / 4);
            channel.write(ByteBuffer.wrap(rust.getBytes(StandardCharsets.US_ASCII)), 4096);
        }
        String words = file + ": it is damaged: leave it as it is, and go on with the newest backup";
        try (JobLibrary library = Crew.library(folder)) {
            assertTrouble(library::check, Kind.NOT_UNDERSTOOD, words);
            assertTrouble(() -> library.findNewest(id), Kind.NOT_UNDERSTOOD, words);
            assertTrouble(() -> library.backup(folder.resolve("b.db")), Kind.NOT_UNDERSTOOD, folder.toString());
        }
        assertThat(folder.resolve("b.db")).doesNotExist();
    }

    @Test
    void a_check_finds_what_belongs_to_nothing_and_what_is_missing() throws Exception {
        Job job;
        try (JobLibrary library = Crew.library(folder)) {
            job = library.create(draft("job: a\n"), PHONE);
            library.save(job.id(), 1, draft("job: b\n"), PHONE);
            assertThat(library.check()).isEmpty();
        }
        try (Session other = Session.open(folder.resolve("jobs.db"))) {
            other.script("drop trigger versions_are_kept; delete from version where number = 1");
            other.script("insert into tick (job, name, made) values ('nosuchjob0', 'heel', 0)");
        }
        try (JobLibrary library = Crew.library(folder)) {
            assertThat(library.check())
                    .containsExactly("a row of tick belongs to no job", "versions of job " + job.id() + " are missing");
        }
    }

    @Test
    void a_folder_in_place_of_the_file_or_a_file_in_place_of_the_folder_is_told() throws IOException {
        assertTrouble(() -> JobLibrary.open(folder, Crew.clock()), Kind.OTHER, folder + ": this is a folder");
        Path file = Files.writeString(folder.resolve("mine"), "mine");
        assertTrouble(
                () -> JobLibrary.open(file.resolve("jobs.db"), Crew.clock()),
                Kind.OTHER,
                file + ": this is a file, not a folder");
        assertThat(file).hasContent("mine");
    }

    @Test
    void a_mistake_inside_undoes_what_was_begun() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            Job job = library.create(draft("job: a\n"), PHONE);
            assertThatThrownBy(() -> library.database().<Integer>write(session -> {
                        session.run("update job set archived = 1");
                        throw new IllegalStateException("no such thing");
                    }))
                    .isInstanceOf(IllegalStateException.class);
            assertThat(library.findNewest(job.id())).contains(job);
        }
    }

    @Test
    void any_name_of_folder_and_file_will_do() throws IOException, FileTrouble {
        Path file = folder.resolve("Günter's jobs? 100%; #1").resolve("file:jobs?mode=memory.db");
        try (JobLibrary library = JobLibrary.open(file, Crew.clock())) {
            library.create(draft("job: a\n"), PHONE);
        }
        assertThat(file).isRegularFile();
        try (JobLibrary library = JobLibrary.open(file, Crew.clock())) {
            assertThat(library.count()).isEqualTo(1);
        }
    }

    private void assertOnly(Path file) throws IOException {
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(file);
        }
    }

    private static void assertTrouble(ThrowingCallable work, Kind kind, String words) {
        FileTrouble trouble = catchThrowableOfType(FileTrouble.class, work);
        assertThat(trouble).isNotNull().hasMessageStartingWith(words);
        assertThat(trouble.kind()).isEqualTo(kind);
    }
}
