package pitchboard.browser;

import java.util.List;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.intake.JobText;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Rewrites a job for a tape in other units. */
final class Converting implements Task {
    @Override
    public String name() {
        return "convert";
    }

    @Override
    public List<String> keys() {
        return List.of("job", "units");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Written.Group job = asked.lines("job", "a job");
        Tape.Units to = asked.units();
        return () -> JobText.findUnits(job)
                .<Json>map(from -> Json.object().with("job", WrittenJson.of(JobText.inUnits(job, from, to))))
                .orElseGet(() -> AnswerJson.problems("job", List.of(unknown(job))));
    }

    private static Problem unknown(Written.Group job) {
        Written at = job.findEntry("units").map(Written.Entry::value).orElse(job);
        return new Problem(at.at(), "units", "", Asked.UNITS);
    }
}
