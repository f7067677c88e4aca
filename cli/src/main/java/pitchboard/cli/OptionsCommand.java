package pitchboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchboard.app.JobFolder;
import pitchboard.app.OpenedOptions;
import pitchboard.app.Options;
import pitchboard.job.Ways;
import pitchboard.store.FileTrouble;

/** Several ways of doing one job, priced side by side. */
@Command(
        name = "options",
        description =
                "Plans, judges and prices several ways of doing one job, and sets them side by side for the customer.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard options examples/yard/float-landing-options.yaml \\",
            "      --yard examples/yard/harbour-street-timber.yaml --rates examples/yard/two-of-us.yaml \\",
            "      --on 2027-06-02 --to papers",
            "",
            "A file of options is explained in docs/options-file.md. The exit code is 1 when an option fails a rule, does",
            "not carry, has no stair or misses a price; such an option is not offered, unless the file says why it is."
        })
final class OptionsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "a file of options")
    private Path file;

    @Mixin
    private PriceArguments prices;

    @Option(names = "--to", paramLabel = "DIR", description = "a folder for the papers and a list as CSV")
    private Optional<Path> folder = Optional.empty();

    @Override
    public Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        Optional<Ways.Prices> priced = prices.open(desk);
        Optional<OpenedOptions.Understood> opened = desk.openOptions(file);
        if (priced.isEmpty() || opened.isEmpty()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        Ways ways = Ways.of(opened.get().offered(), opened.get().jobs(), priced.get());
        if (folder.isPresent()) {
            for (Path written : Options.write(ways, JobFolder.stem(file), folder.get())) {
                desk.print(written + "\n");
            }
        } else {
            desk.print(Options.text(ways));
        }
        ways.ways().forEach(way -> tell(desk, way));
        ways.stale().forEach(desk::say);
        return ways.isSound() ? ExitCode.DONE : ExitCode.FAILING;
    }

    private static void tell(Desk desk, Ways.Way way) {
        way.whyNotOffered()
                .ifPresent(why -> desk.say("not offered: " + way.said().name() + ": " + why));
        if (way.whyNotOffered().isEmpty()) {
            List<String> failures = way.failures();
            failures.forEach(words -> desk.say("offered although: " + way.said().name() + " " + words));
        }
    }
}
