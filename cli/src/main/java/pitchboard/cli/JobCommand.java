package pitchboard.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.store.FileTrouble;

/** What the commands about one job file share: open it, solve it, print, and say by the exit code how it stands. */
abstract class JobCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a job file")
    private Path file;

    abstract String print(Outcome outcome);

    @Override
    public final Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        Optional<Job> job = desk.open(file);
        if (job.isEmpty()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        Outcome outcome = Pipeline.solve(job.get());
        desk.print(print(outcome));
        return code(outcome);
    }

    static int code(Outcome outcome) {
        return outcome.match(designed -> !designed.hasFailures(), none -> false) ? ExitCode.DONE : ExitCode.FAILING;
    }
}
