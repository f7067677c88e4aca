package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.RandomJobs.Asked;
import pitchboard.Samples;
import pitchboard.intake.wanted.Wanted;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** A job for a tape in other units says the same, to the last unit of length. */
final class ConversionTest {
    private static final Samples<Asked> JOBS = Samples.jobs(300);

    @Test
    void every_length_is_exactly_the_same_and_so_is_the_paper() {
        int[] held = {0};
        JOBS.hold(asked -> {
            Notes notes = Notes.of(asked.site(), asked.brief(), "IRC 2021", Optional.empty());
            Written.Group job = JobText.write(notes);
            Tape.Units from = notes.brief().tape().units();
            Written.Group there = JobText.inUnits(job, from, other(from));
            if (JobText.ofJson(JsonWriter.write(job), List.of()) instanceof JobText.Understood before) {
                Notes after = JobJson.understood(JsonWriter.write(there));
                assertSame(before.notes(), after);
                assertThat(after.brief().tape().units()).isEqualTo(other(from));
                assertSame(after, JobJson.understood(JsonWriter.write(JobText.inUnits(there, other(from), from))));
                held[0]++;
            }
        });
        assertThat(held[0]).isGreaterThan(JOBS.all().size() / 2);
    }

    private static void assertSame(Notes before, Notes after) {
        assertThat(after.site()).isEqualTo(before.site());
        assertThat(Wanted.of(after.brief())).isEqualTo(Wanted.of(before.brief()));
        assertThat(after.brief().title()).isEqualTo(before.brief().title());
        assertThat(after.brief().paper()).isEqualTo(before.brief().paper());
    }

    private static Tape.Units other(Tape.Units units) {
        return units == Tape.Units.INCHES ? Tape.Units.MILLIMETRES : Tape.Units.INCHES;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # Bare numbers get their unit; words, falls and names stay. What a job leaves out and inches decide is said:
            # the paper, the inch that is cut off each end of a stringer, and by which standard strength is reckoned.
            {"units": "inches", "measured": {"rise": "105 3/4"}} | {"units": "millimetres", "paper": "letter", "measured": {"rise": "2686.05 mm"}}
            {"units": "inches", "mark to": "1/32", "paper": "A4"} | {"units": "millimetres", "mark to": "0.5 mm", "paper": "A4"}
            {"units": "inches", "paper": "A4", "measured": {"rise": {"length": "100", "sure": "estimated"}}} | {"units": "millimetres", "paper": "A4", "measured": {"rise": {"length": "2540 mm", "sure": "estimated"}}}
            {"units": "inches", "paper": "A4", "measured": {"finish to come above": "none", "landing above": {"fall": "1 in 60"}}} | {"units": "millimetres", "paper": "A4", "measured": {"finish to come above": "none", "landing above": {"fall": "1 in 60"}}}
            {"units": "inches", "paper": "A4", "wanted": {"stringers": {"depth": "11 1/4"}}} | {"units": "millimetres", "paper": "A4", "wanted": {"stringers": {"depth": "285.75 mm", "trim": "25.4 mm"}, "strength": {"method": "allowable stress"}}}
            {"units": "inches", "paper": "A4", "measured": {"overhead": [{"from": "-6"}]}} | {"units": "millimetres", "paper": "A4", "measured": {"overhead": [{"from": "-152.4 mm"}]}}
            # Out of every range, not a length, not a line of the form: it goes on being wrong, and does not turn right.
            {"units": "inches", "paper": "A4", "measured": {"rise": "5000", "run available": "12 ells", "height": "12"}} | {"units": "millimetres", "paper": "A4", "measured": {"rise": "127000 mm", "run available": "12 ells", "height": "12"}}
            {"units": "millimetres", "paper": "A4", "measured": {"rise": "2686"}} | {"units": "inches", "paper": "A4", "measured": {"rise": "2686 mm"}}
            """)
    void a_job_that_is_not_complete_is_converted_as_far_as_it_goes(String job, String converted) {
        Written.Group before = written(job);
        Tape.Units from = JobText.findUnits(before).orElseThrow();
        assertThat(JobText.inUnits(before, from, other(from)).anywhere())
                .isEqualTo(written(converted).anywhere());
    }

    @Test
    void a_job_of_bare_numbers_reads_the_same() {
        Written.Group job = written(JobJson.WHOLE);
        Written.Group there = JobText.inUnits(job, Tape.Units.INCHES, Tape.Units.MILLIMETRES);
        assertSame(JobJson.understood(JobJson.WHOLE), JobJson.understood(JsonWriter.write(there)));
    }

    @Test
    void units_that_a_job_does_not_say_are_not_found() {
        assertThat(JobText.findUnits(written("{\"job\": \"a\"}"))).isEmpty();
        assertThat(JobText.findUnits(written("{\"units\": \"ells\"}"))).isEmpty();
    }

    private static Written.Group written(String json) {
        return JsonReader.read(json).match(legible -> (Written.Group) legible.written(), illegible -> {
            throw new AssertionError(illegible.problems());
        });
    }
}
