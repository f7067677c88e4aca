package pitchboard.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs.Asked;
import pitchboard.Samples;
import pitchboard.rules.books.Books;
import pitchboard.sheet.Sheet;

/** Sheets that are asked for, against the whole set, on random jobs. */
final class SheetsLawsTest {
    private static final Samples<Asked> JOBS = Samples.jobs(40);

    private static Stream<Outcome.Designed> designed(Asked asked) {
        Job job = new Job(asked.site(), asked.brief(), Books.all().get(0), Fingerprint.of("any"));
        return Pipeline.solve(job).match(Stream::of, none -> Stream.empty());
    }

    @Test
    void a_sheet_asked_for_alone_is_the_one_in_the_whole_set() {
        JOBS.hold(job -> designed(job).forEach(designed -> {
            for (Sheet sheet : Pipeline.sheets(designed)) {
                assertThat(Pipeline.sheets(designed, sheet.id()::equals)).containsExactly(sheet);
            }
        }));
    }

    @Test
    void sheets_asked_for_come_in_the_order_of_the_set_and_none_that_it_has_not() {
        List<String> wanted = List.of("rules", "poster", "elevation");
        JOBS.hold(job -> designed(job)
                .forEach(designed -> assertThat(Pipeline.sheets(designed, wanted::contains))
                        .extracting(Sheet::id)
                        .containsExactly("elevation", "rules")));
    }

    @Test
    void the_jobs_tried_here_come_to_stairs() {
        assertThat(JOBS.stream().flatMap(SheetsLawsTest::designed)).hasSizeGreaterThan(5);
    }
}
