package pitchboard.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pitchboard.app.Jobs;
import pitchboard.app.OpenedJob;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.sheet.Sheet;
import pitchboard.store.FileTrouble;

/** One job, warm: from what was said to a stair with its findings, and from there to its sheets. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class OneJobBenchmark {
    private Job job;
    private Outcome.Designed designed;

    @Setup
    public void open() throws FileTrouble {
        Path file = Path.of(System.getProperty("pitchboard.example", "examples/boathouse-loft.yaml"));
        job = ((OpenedJob.Understood) Jobs.open(file)).job();
        designed = (Outcome.Designed) Pipeline.solve(job);
    }

    @Benchmark
    public Outcome solve() {
        return Pipeline.solve(job);
    }

    @Benchmark
    public List<Sheet> sheets() {
        return Pipeline.sheets(designed);
    }

    @Benchmark
    public List<Sheet> solveAndSheets() {
        return Pipeline.sheets((Outcome.Designed) Pipeline.solve(job));
    }
}
