package pitchboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchboard.app.Purchases;
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
        Together together = Together.of(desk, files, yard);
        return together.purchase().isPresent() ? buy(desk, together.purchase().get()) : together.code();
    }

    private int buy(Desk desk, Purchase purchase) throws FileTrouble {
        if (folder.isPresent()) {
            for (Path written : Purchases.write(purchase, Together.name(files), folder.get())) {
                desk.print(written + "\n");
            }
        } else {
            desk.print(json ? Purchases.json(purchase) : Purchases.text(purchase));
        }
        return purchase.list().isComplete() ? ExitCode.DONE : ExitCode.FAILING;
    }
}
