package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs;
import pitchboard.intake.written.JsonWriter;

/** A job that is written and read again says the same, to the last unit of length. */
final class JobRoundTripLawsTest {
    private static final int JOBS = 500;

    @Test
    void what_was_written_is_read_again_the_same() {
        int understood = 0;
        for (long seed = 0; seed < JOBS; seed++) {
            RandomJobs.Asked asked = RandomJobs.of(seed);
            Notes notes = new Notes(asked.site(), asked.brief(), "IRC 2021", Optional.empty());
            String json = JsonWriter.write(JobText.write(notes));
            if (JobText.ofJson(json, List.of("IRC 2021")) instanceof JobText.Understood read) {
                assertThat(read.notes()).as("seed %d", seed).isEqualTo(notes);
                understood++;
            }
        }
        // Some random jobs are odd on purpose: what is beyond the bounds of a job file is refused, not changed.
        assertThat(understood).isGreaterThan(JOBS / 4);
    }
}
