package pitchboard.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchboard.app.Reports;
import pitchboard.job.Comparison;
import pitchboard.job.Job;
import pitchboard.rules.Rulebook;
import pitchboard.store.FileTrouble;

/** One job under several rulebooks. */
@Command(
        name = "compare",
        description = "Judges the stair of a job by several rulebooks side by side, and looks for one that fits all.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  pitchboard compare examples/boathouse-loft.yaml --under \"OSHA 1926\" --under \"IBC 2021\"")
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a job file")
    private Path file;

    @Option(
            names = "--under",
            required = true,
            paramLabel = "<rulebook>",
            description = "a rulebook beside the job's own; may be given again")
    private List<String> under = new ArrayList<>();

    @Option(names = "--json", description = "print JSON for other programs")
    private boolean json;

    @Override
    public Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        Optional<List<Rulebook>> books = NamedBooks.find(under, desk);
        if (books.isEmpty()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        Optional<Job> job = desk.open(file);
        if (job.isEmpty()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        Comparison comparison = Comparison.of(job.get(), books.get());
        desk.print(json ? Reports.json(comparison) : Reports.text(comparison));
        return comparison.hasFailures() ? ExitCode.FAILING : ExitCode.DONE;
    }
}
