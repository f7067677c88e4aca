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
import pitchboard.app.OpenedRates;
import pitchboard.app.Quotes;
import pitchboard.job.Purchase;
import pitchboard.job.Quotation;
import pitchboard.money.Day;
import pitchboard.store.FileTrouble;

/** What a job costs, and what it is offered for. */
@Command(
        name = "quote",
        description =
                "Costs one job or several together: lumber as it is bought, sundries, hours; and makes the cost sheet"
                        + " and the quote.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard quote examples/boathouse-loft.yaml --yard examples/yard/harbour-street-timber.yaml \\",
            "      --rates examples/yard/two-of-us.yaml --on 2027-05-14 --to papers",
            "",
            "Rates are explained in docs/rates-file.md. The exit code is 1 while a price is missing, and then there is a",
            "cost sheet and no quote; and when the stair fails a rule, does not carry or has no price for all of it."
        })
final class QuoteCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "job files; they are costed together")
    private List<Path> files;

    @Mixin
    private PriceArguments prices;

    @Option(names = "--to", paramLabel = "DIR", description = "a folder for cost sheet, quote and a list as CSV")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--json", description = "print JSON for other programs: every figure, for the crew alone")
    private boolean json;

    @Override
    public Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        Optional<Day> on = prices.day(desk);
        Optional<OpenedRates.Understood> opened = desk.openRates(prices.rates());
        Together together = Together.of(desk, files, prices.yard());
        if (on.isEmpty() || opened.isEmpty()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        return together.purchase().isPresent()
                ? quote(desk, together.purchase().get(), opened.get(), on.get())
                : together.code();
    }

    private int quote(Desk desk, Purchase purchase, OpenedRates.Understood opened, Day on) throws FileTrouble {
        if (prices.differ(desk, opened, purchase.list().yard().currency())) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        Quotation quotation = Quotation.of(purchase, opened.rates(), opened.text(), on);
        if (folder.isPresent()) {
            for (Path written : Quotes.write(quotation, Together.name(files), folder.get())) {
                desk.print(written + "\n");
            }
        } else {
            desk.print(json ? Quotes.json(quotation) : Quotes.text(quotation));
        }
        quotation.costing().missing().forEach(words -> desk.say("no price, so no quote: " + words));
        quotation.costing().stale().forEach(desk::say);
        quotation.cautions().forEach(words -> desk.say("look first: " + words));
        boolean sound = quotation.costing().isComplete() && quotation.cautions().isEmpty();
        return sound ? ExitCode.DONE : ExitCode.FAILING;
    }
}
