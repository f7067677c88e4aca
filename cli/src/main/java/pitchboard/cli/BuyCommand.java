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
import pitchboard.app.JobFolder;
import pitchboard.app.OpenedYard;
import pitchboard.app.Purchases;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.job.Purchase;
import pitchboard.store.FileTrouble;

/** The boards of one job, or of several bought together. */
@Command(
        name = "buy",
        description =
                "Finds the boards that cost least and yield every piece, of one job or of several together, and how"
                        + " to cut them.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard buy examples/boathouse-loft.yaml --yard examples/yard/harbour-street-timber.yaml",
            "  pitchboard buy loft.yaml deck.yaml --yard yard.yaml --to papers",
            "",
            "A price list is explained in docs/yard-file.md. The exit code is 1 when a piece cannot be had or a price is",
            "missing."
        })
final class BuyCommand implements Callable<Integer> {
    private static final int MOST_JOBS = 26;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "job files; what they need is bought together")
    private List<Path> files;

    @Option(names = "--yard", required = true, paramLabel = "LIST", description = "the price list, with the rack")
    private Path yard;

    @Option(
            names = "--to",
            paramLabel = "DIR",
            description = "a folder for the papers for yard and bench, and for the lists as CSV")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--json", description = "print JSON for other programs")
    private boolean json;

    @Override
    public Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        if (files.size() > MOST_JOBS) {
            desk.say(files.size() + " job files; at most " + MOST_JOBS + " are bought together");
            return ExitCode.NOT_UNDERSTOOD;
        }
        Optional<OpenedYard.Understood> prices = desk.openYard(yard);
        List<Job> jobs = new ArrayList<>();
        for (Path file : files) {
            desk.open(file).ifPresent(jobs::add);
        }
        if (prices.isEmpty() || jobs.size() < files.size()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        List<Outcome.Designed> designed = designed(desk, jobs);
        return designed.size() < jobs.size() ? ExitCode.FAILING : buy(desk, designed, prices.get());
    }

    private List<Outcome.Designed> designed(Desk desk, List<Job> jobs) {
        List<Outcome.Designed> all = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            if (Pipeline.solve(jobs.get(i)) instanceof Outcome.Designed designed) {
                all.add(designed);
            } else {
                desk.say(files.get(i) + ": no stair fits, so there is nothing to buy; see: pitchboard choices "
                        + files.get(i));
            }
        }
        return all;
    }

    private int buy(Desk desk, List<Outcome.Designed> designed, OpenedYard.Understood prices) throws FileTrouble {
        Purchase purchase = Purchase.of(designed, prices.yard(), prices.text());
        if (folder.isPresent()) {
            String name = files.size() == 1 ? JobFolder.stem(files.get(0)) : "together";
            for (Path written : Purchases.write(purchase, name, folder.get())) {
                desk.print(written + "\n");
            }
        } else {
            desk.print(json ? Purchases.json(purchase) : Purchases.text(purchase));
        }
        return purchase.list().isComplete() ? ExitCode.DONE : ExitCode.FAILING;
    }
}
