package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static pitchboard.store.library.Crew.PHONE;
import static pitchboard.store.library.Crew.draft;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;

/** Several at once: threads of one program, and two programs (each with a library of its own) on one file. */
@Timeout(60)
final class TwoWritersTest {
    private static final int LINES_EACH = 25;

    @TempDir
    Path folder;

    @Test
    void of_savings_at_once_one_wins_and_the_other_is_told() throws Exception {
        try (JobLibrary here = Crew.library(folder);
                JobLibrary there = Crew.library(folder)) {
            String id = here.create(draft("job: a\n"), PHONE).id();
            List<Callable<Saving>> savings = IntStream.range(0, 8)
                    .<Callable<Saving>>mapToObj(
                            i -> () -> (i % 2 == 0 ? here : there).save(id, 1, draft("job: a" + i + "\n"), PHONE))
                    .toList();
            List<Saving> came = atOnce(savings);
            assertThat(came).filteredOn(Saving.Saved.class::isInstance).hasSize(1);
            Version kept = here.findNewest(id).orElseThrow().version();
            assertThat(came)
                    .filteredOn(Saving.Conflict.class::isInstance)
                    .hasSize(7)
                    .containsOnly(new Saving.Conflict(kept));
            assertThat(here.versions(id)).hasSize(2);
        }
    }

    @Test
    void those_who_begin_again_from_the_newest_lose_no_line() throws Exception {
        try (JobLibrary here = Crew.library(folder);
                JobLibrary there = Crew.library(folder)) {
            String id = here.create(draft(""), PHONE).id();
            atOnce(List.of(
                    () -> append(here, id, "a"),
                    () -> append(here, id, "b"),
                    () -> append(there, id, "c"),
                    () -> append(there, id, "d")));
            String whole =
                    here.findNewest(id).orElseThrow().version().draft().job().text();
            assertThat(whole.lines()).hasSize(4 * LINES_EACH).doesNotHaveDuplicates();
            assertThat(there.versions(id)).hasSize(1 + 4 * LINES_EACH);
            for (int number = 1; number <= 4 * LINES_EACH; number++) {
                Version version = there.findVersion(id, number).orElseThrow().version();
                assertThat(whole).startsWith(version.draft().job().text());
            }
            assertThat(here.check()).isEmpty();
        }
    }

    @Test
    void a_library_is_made_once_when_many_open_it_at_once() throws Exception {
        for (int round = 0; round < 5; round++) {
            Path inner = folder.resolve("round " + round);
            List<Callable<String>> openers = IntStream.range(0, 6)
                    .<Callable<String>>mapToObj(i -> () -> {
                        try (JobLibrary library = Crew.library(inner)) {
                            return library.create(draft("job: " + i + "\n"), PHONE)
                                    .id();
                        }
                    })
                    .toList();
            List<String> made = atOnce(openers);
            try (JobLibrary library = Crew.library(inner)) {
                assertThat(library.list(Crew.all())).extracting(Job.Line::id).containsExactlyInAnyOrderElementsOf(made);
            }
        }
    }

    @Test
    void many_read_while_one_writes() throws Exception {
        try (JobLibrary library = Crew.library(folder)) {
            String id = library.create(draft(""), PHONE).id();
            List<Callable<String>> work = new ArrayList<>();
            work.add(() -> append(library, id, "w"));
            for (int reader = 0; reader < 12; reader++) {
                work.add(() -> watch(library, id));
            }
            assertThat(atOnce(work)).hasSize(13).containsOnly("done");
        }
    }

    /** What was seen once is never gone again. */
    private static String watch(JobLibrary library, String id) throws FileTrouble {
        int seen = 0;
        while (seen <= LINES_EACH) {
            Version newest = library.findNewest(id).orElseThrow().version();
            assertThat(newest.number()).isGreaterThanOrEqualTo(seen);
            assertThat(newest.draft().job().text().lines()).hasSize(newest.number() - 1);
            assertThat(library.list(Crew.all()).get(0).version()).isGreaterThanOrEqualTo(newest.number());
            seen = newest.number();
        }
        return "done";
    }

    private static String append(JobLibrary library, String id, String who) throws FileTrouble {
        for (int i = 0; i < LINES_EACH; ) {
            Version base = library.findNewest(id).orElseThrow().version();
            Draft longer = draft(base.draft().job().text() + who + i + "\n");
            if (library.save(id, base.number(), longer, PHONE) instanceof Saving.Saved) {
                i++;
            }
        }
        return "done";
    }

    private static <T> List<T> atOnce(List<Callable<T>> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(work.size());
        try {
            List<T> came = new ArrayList<>();
            for (Future<T> future : threads.invokeAll(work)) {
                came.add(future.get());
            }
            return came;
        } finally {
            threads.shutdownNow();
        }
    }
}
