package pitchboard.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs;
import pitchboard.Samples;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.inspection.SheetInspection;

/** Jobs nobody arranged for the papers, drawn under every rulebook in turn. */
final class RandomSheetsTest {
    private static final int JOBS = 150;
    private static final String UNKNOWN_LETTER = "the type has no";

    private static Optional<List<Sheet>> findSheets(RandomJobs.Asked asked) {
        List<Rulebook> books = Books.all();
        Rulebook book = books.get((int) (asked.seed() % books.size()));
        Job job = new Job(asked.site(), asked.brief(), book, Fingerprint.of("seed " + asked.seed()));
        return Pipeline.solve(job).match(designed -> Optional.of(Pipeline.sheets(designed)), none -> Optional.empty());
    }

    /** Labels that meet each other are looked for on the examples: some of these jobs are odd on purpose. */
    @Test
    void every_stair_that_is_found_can_be_drawn_in_letters_the_type_has() {
        AtomicInteger drawn = new AtomicInteger();
        Samples.jobs(JOBS)
                .hold(asked -> findSheets(asked).ifPresent(sheets -> {
                    drawn.incrementAndGet();
                    assertThat(sheets.stream().flatMap(sheet -> SheetInspection.complaints(sheet).stream()))
                            .noneMatch(complaint -> complaint.contains(UNKNOWN_LETTER));
                }));
        assertThat(drawn.get()).isGreaterThan(JOBS / 4);
    }
}
