package pitchboard.browser;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.intake.JobText;
import pitchboard.intake.revision.Differences;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Tells what differs between two jobs; how a length is spelled makes no difference where both jobs can be read. */
final class Comparing implements Task {
    @Override
    public String name() {
        return "compare";
    }

    @Override
    public List<String> keys() {
        return List.of("before", "after");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Written.Group before = asked.lines("before", "a job");
        Written.Group after = asked.lines("after", "a job");
        return () -> Json.object().with("differences", LeafJson.of(differences(before, after)));
    }

    private static Differences differences(Written.Group before, Written.Group after) {
        Optional<Written.Group> readAfter = read(after);
        Optional<Written.Group> readBefore = readAfter.flatMap(plain -> read(before, JobText.findUnits(plain)));
        return readBefore.isPresent()
                ? Differences.between(withUnitsOf(before, readBefore.get()), readAfter.orElseThrow())
                : Differences.between(before, after);
    }

    /** As the program itself would write the job; empty when it cannot be read. */
    private static Optional<Written.Group> read(Written.Group job) {
        return JobText.of(new Transcript.Legible(job), List.of())
                .match(understood -> Optional.of(JobText.write(understood.notes())), unread -> Optional.empty());
    }

    private static Optional<Written.Group> read(Written.Group job, Optional<Tape.Units> to) {
        return JobText.findUnits(job).flatMap(from -> read(JobText.inUnits(job, from, to.orElse(from))));
    }

    /** That the units are others is a difference of its own, but no length differs for it. */
    private static Written withUnitsOf(Written.Group job, Written.Group converted) {
        Optional<Written.Entry> units = job.findEntry("units");
        return new Written.Group(
                converted.at(),
                converted.entries().stream()
                        .map(entry -> entry.key().equals("units") ? units.orElse(entry) : entry)
                        .toList());
    }
}
