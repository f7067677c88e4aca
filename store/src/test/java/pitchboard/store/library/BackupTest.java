package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pitchboard.store.library.Crew.PHONE;
import static pitchboard.store.library.Crew.draft;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;

@Timeout(60)
final class BackupTest {
    @TempDir
    Path folder;

    @Test
    void a_backup_is_a_library_like_the_one_it_was_made_from() throws FileTrouble {
        Path file = folder.resolve("it's a backup?.db");
        try (JobLibrary library = Crew.library(folder)) {
            String id = library.create(draft("job: a\n"), PHONE).id();
            library.save(id, 1, draft("job: b\n"), PHONE);
            library.ticks().put(id, "mark 3");
            Device device = library.devices().add("Phone", "5f1e");
            library.backup(file);
            try (JobLibrary backup = JobLibrary.open(file, Crew.clock())) {
                assertThat(backup.check()).isEmpty();
                assertThat(backup.list(Crew.all())).isEqualTo(library.list(Crew.all()));
                assertThat(backup.versions(id)).isEqualTo(library.versions(id));
                assertThat(backup.findVersion(id, 1)).isEqualTo(library.findVersion(id, 1));
                assertThat(backup.ticks().of(id)).isEqualTo(library.ticks().of(id));
                assertThat(backup.devices().list()).containsExactly(device);
                assertThat(backup.save(id, 2, draft("job: c\n"), PHONE)).isInstanceOf(Saving.Saved.class);
            }
            assertThat(library.versions(id)).hasSize(2);
        }
    }

    @Test
    void it_holds_all_that_was_saved_before_and_nothing_half_while_saving_goes_on() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        AtomicBoolean enough = new AtomicBoolean();
        AtomicInteger acknowledged = new AtomicInteger();
        try (JobLibrary library = Crew.library(folder)) {
            String id = library.create(draft("job: 0\n"), PHONE).id();
            Future<Integer> writer = threads.submit(() -> {
                int number = 1;
                while (!enough.get()) {
                    String text = "job: " + number + "\n" + "# a long thought\n".repeat(300);
                    assertThat(library.save(id, number, draft(text), PHONE)).isInstanceOf(Saving.Saved.class);
                    number++;
                    acknowledged.set(number);
                }
                return number;
            });
            int before = 0;
            for (int round = 0; round < 5; round++) {
                while (acknowledged.get() < before + 10) {
                    Thread.onSpinWait();
                }
                before = acknowledged.get();
                Path file = folder.resolve("backup " + round + ".db");
                library.backup(file);
                assertHoldsTheBeginning(library, file, id, before);
            }
            enough.set(true);
            int last = writer.get();
            assertThat(library.versions(id)).hasSize(last);
        } finally {
            enough.set(true);
            threads.shutdownNow();
        }
    }

    private static void assertHoldsTheBeginning(JobLibrary library, Path file, String id, int atLeast)
            throws FileTrouble {
        try (JobLibrary backup = JobLibrary.open(file, Crew.clock())) {
            assertThat(backup.check()).isEmpty();
            int held = backup.versions(id).size();
            assertThat(held).isGreaterThanOrEqualTo(atLeast);
            for (int number = 1; number <= held; number++) {
                assertThat(backup.findVersion(id, number)).isEqualTo(library.findVersion(id, number));
            }
        }
    }

    @Test
    void it_never_takes_the_place_of_a_file_least_of_all_of_the_library() throws IOException, FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            Job job = library.create(draft("job: a\n"), PHONE);
            Path mine = Files.writeString(folder.resolve("mine.db"), "mine");
            Path link = Files.createSymbolicLink(folder.resolve("link.db"), folder.resolve("jobs.db"));
            for (Path taken : new Path[] {mine, folder.resolve("jobs.db"), folder.resolve("./jobs.db"), link}) {
                assertThatThrownBy(() -> library.backup(taken))
                        .isInstanceOf(FileTrouble.class)
                        .hasMessageContaining("is there already and is not written over");
            }
            assertThat(mine).hasContent("mine");
            assertThat(library.findNewest(job.id())).contains(job);
        }
    }

    @Test
    void one_that_cannot_be_made_leaves_nothing() throws IOException, FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            library.create(draft("job: a\n"), PHONE);
            assertThatThrownBy(() -> library.backup(folder.resolve("none/b.db")))
                    .isInstanceOf(FileTrouble.class)
                    .hasMessageContaining("there is no such file or folder");
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(folder.resolve("jobs.db"));
        }
    }
}
