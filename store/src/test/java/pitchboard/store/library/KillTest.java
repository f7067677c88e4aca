package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;

/**
 * Programs that are killed in the middle of saving, without a word, again and again on the same files. Each save that was
 * acknowledged is there afterwards, and at most one more: the one that was on its way.
 *
 * <p>{@code -Dpitchboard.kills=1000} kills more often.
 */
final class KillTest {
    private static final int KILLS = Integer.getInteger("pitchboard.kills", 200);

    /** Programs at once, each on a file of its own. */
    private static final int LANES = 3;

    private static final int LONGEST_LIFE_MICROSECONDS = 60_000;

    @TempDir
    Path folder;

    @Test
    void every_acknowledged_save_survives_a_kill() throws Exception {
        SaverProgram program = SaverProgram.made(folder);
        ExecutorService lanes = Executors.newFixedThreadPool(LANES);
        try {
            List<Callable<Integer>> work = new ArrayList<>();
            for (int lane = 0; lane < LANES; lane++) {
                int seed = lane;
                int kills = KILLS / LANES + (lane < KILLS % LANES ? 1 : 0);
                work.add(() -> killAgainAndAgain(program, seed, kills));
            }
            int acknowledged = 0;
            for (Future<Integer> lane : lanes.invokeAll(work)) {
                acknowledged += lane.get();
            }
            System.out.println(KILLS + " kills, " + acknowledged + " acknowledged saves, all found");
            assertThat(acknowledged).as("saves acknowledged").isGreaterThan(KILLS);
        } finally {
            lanes.shutdownNow();
        }
    }

    /** @return how many saves were acknowledged */
    private int killAgainAndAgain(SaverProgram program, int lane, int kills) throws Exception {
        Path file = folder.resolve("lane " + lane + ".db");
        SplittableRandom random = new SplittableRandom(lane);
        String id;
        try (JobLibrary library = JobLibrary.open(file, Clock.systemUTC())) {
            id = library.create(Saver.draft(1), By.device("Saver")).id();
        }
        int acknowledged = 0;
        int found = 1;
        for (int kill = 0; kill < kills; kill++) {
            List<Integer> numbers = saveUntilKilled(program, file, id, random.nextInt(LONGEST_LIFE_MICROSECONDS));
            assertThat(numbers.get(0)).isEqualTo(found + 1);
            int last = numbers.get(numbers.size() - 1);
            assertThat(last).isEqualTo(found + numbers.size());
            acknowledged += numbers.size();
            found = assertHolds(file, id, found, last);
        }
        return acknowledged;
    }

    /** @return how many versions there are */
    private static int assertHolds(Path file, String id, int before, int last) throws FileTrouble {
        try (JobLibrary library = JobLibrary.open(file, Clock.systemUTC())) {
            assertThat(library.check()).isEmpty();
            int newest = library.findNewest(id).orElseThrow().version().number();
            assertThat(newest).isBetween(last, last + 1);
            for (int number = before; number <= newest; number++) {
                assertThat(library.findVersion(id, number)
                                .orElseThrow()
                                .version()
                                .draft())
                        .isEqualTo(Saver.draft(number));
            }
            return newest;
        }
    }

    /** @return the numbers that it said, from its first word on for that many microseconds */
    private static List<Integer> saveUntilKilled(SaverProgram program, Path file, String id, int microseconds)
            throws Exception {
        Path errors = file.resolveSibling(file.getFileName() + ".errors");
        Process saver = program.start(errors, file.toString(), id);
        try (BufferedReader out = saver.inputReader(StandardCharsets.US_ASCII)) {
            String first = out.readLine();
            LockSupport.parkNanos(microseconds * 1000L);
            // By its handle: Process.destroyForcibly would also throw away what it said last.
            saver.toHandle().destroyForcibly();
            List<Integer> numbers = Stream.concat(Stream.ofNullable(first), out.lines())
                    .map(Integer::valueOf)
                    .toList();
            assertThat(saver.waitFor(10, TimeUnit.SECONDS)).isTrue();
            assertThat(errors).as("what the program had to complain of").isEmptyFile();
            assertThat(numbers).as("what it said before it was killed").isNotEmpty();
            return numbers;
        } finally {
            saver.toHandle().destroyForcibly();
        }
    }
}
