package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs.Asked;
import pitchboard.Samples;
import pitchboard.intake.written.JsonWriter;
import pitchboard.measure.Length;
import pitchboard.site.HeadSupport;
import pitchboard.site.Site;

/** A job that is written and read again says the same, to the last unit of length. */
final class JobRoundTripLawsTest {
    private static final Samples<Asked> JOBS = Samples.jobs(600);

    @Test
    void what_was_written_is_read_again_the_same() {
        int[] understood = {0};
        JOBS.hold(asked -> {
            Notes notes = Notes.of(sayable(asked.site()), asked.brief(), "IRC 2021", Optional.of("changes.yaml"));
            String json = JsonWriter.write(JobText.write(notes));
            if (JobText.ofJson(json, List.of("IRC 2021")) instanceof JobText.Understood read) {
                assertThat(read.notes()).isEqualTo(notes);
                understood[0]++;
            }
        });
        // Some random jobs are odd on purpose: what is beyond the bounds of a job file is refused, not changed.
        assertThat(understood[0]).isGreaterThan(JOBS.all().size() * 3 / 4);
    }

    /** A job file counts a finish still to come into the decking, and whoever saw something overhead has looked up. */
    private static Site sayable(Site site) {
        HeadSupport head = site.head();
        Length decking = Length.max(head.decking(), site.upperFinish());
        return new Site(
                site.rise(),
                site.upperFinish(),
                site.lowerFinish(),
                site.runAvailable(),
                site.overheads(),
                site.overheadChecked() || !site.overheads().isEmpty(),
                new HeadSupport(head.name(), head.depth(), decking, head.deckingOverhang()),
                site.foot(),
                site.leftSide(),
                site.rightSide(),
                site.setting(),
                site.top(),
                site.bottom(),
                site.lit(),
                site.fallBeside(),
                site.edgeAbove(),
                site.sights());
    }
}
