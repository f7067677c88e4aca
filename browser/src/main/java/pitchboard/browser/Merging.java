package pitchboard.browser;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import pitchboard.documents.json.Json;
import pitchboard.intake.JobText;
import pitchboard.intake.revision.Merge;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Brings two people's changes to one job together. */
final class Merging implements Task {
    @Override
    public String name() {
        return "merge";
    }

    @Override
    public List<String> keys() {
        return List.of("base", "mine", "theirs");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Written.Group base = asked.lines("base", "the job that both started from");
        Written.Group mine = asked.lines("mine", "a job");
        Written.Group theirs = asked.lines("theirs", "a job");
        return () -> answer(merge(base, mine, theirs));
    }

    /** Else a bare number that came in from a job in inches would count millimetres. */
    private static Merge merge(Written.Group base, Written.Group mine, Written.Group theirs) {
        Optional<Tape.Units> before = JobText.findUnits(base);
        Optional<Tape.Units> after = Stream.of(mine, theirs)
                .map(JobText::findUnits)
                .flatMap(Optional::stream)
                .filter(units -> before.isPresent() && !before.get().equals(units))
                .findFirst();
        return after.isEmpty()
                ? Merge.of(base, mine, theirs)
                : Merge.of(in(after.get(), base), in(after.get(), mine), in(after.get(), theirs));
    }

    private static Written.Group in(Tape.Units to, Written.Group job) {
        return JobText.findUnits(job)
                .map(from -> JobText.inUnits(job, from, to))
                .orElse(job);
    }

    private static Json answer(Merge merge) {
        return Json.object()
                .with("job", WrittenJson.of(merge.job()))
                .with("conflicts", Json.list(merge.conflicts(), Merging::conflict))
                .with("taken", LeafJson.of(merge.taken()));
    }

    private static Json conflict(Merge.Conflict conflict) {
        return Json.object()
                .says("field", conflict.field())
                .with("base", WrittenJson.of(conflict.base()))
                .with("mine", WrittenJson.of(conflict.mine()))
                .with("theirs", WrittenJson.of(conflict.theirs()));
    }
}
