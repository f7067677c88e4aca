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
import pitchboard.afterwards.Afterwards;
import pitchboard.afterwards.Took;
import pitchboard.app.Hindsight;
import pitchboard.job.Purchase;
import pitchboard.job.Quotation;
import pitchboard.job.Ways;
import pitchboard.store.FileTrouble;

/** What a job took against what was planned. */
@Command(
        name = "afterwards",
        description =
                "Holds the hours and costs of a job that is done against its quote, and finds the planning figures"
                        + " that would have been right.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard afterwards examples/dock-steps-that-carry.yaml --took examples/yard/dock-steps-took.yaml \\",
            "      --yard examples/yard/harbour-street-timber.yaml --rates examples/yard/two-of-us.yaml \\",
            "      --on 2027-05-14 --to papers",
            "",
            "Job, price list, rates and day are those of the quote. A file of what a job took is explained in",
            "docs/took-file.md. The exit code is 1 when something planned was not noted."
        })
final class AfterwardsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "the job files of the quote")
    private List<Path> files;

    @Option(names = "--took", required = true, paramLabel = "NOTES", description = "hours and costs as they were noted")
    private Path took;

    @Mixin
    private PriceArguments prices;

    @Option(names = "--to", paramLabel = "DIR", description = "a folder for the paper and the lists as CSV")
    private Optional<Path> folder = Optional.empty();

    @Option(
            names = "--rates-to",
            paramLabel = "FILE",
            description = "a new file for the rates with the figures that would have been right; one that is there"
                    + " already is left alone")
    private Optional<Path> ratesTo = Optional.empty();

    @Override
    public Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        Optional<Took> noted = desk.openTook(took);
        Optional<Ways.Prices> priced = prices.open(desk);
        if (noted.isEmpty() || priced.isEmpty() || differ(desk, noted.get(), priced.get())) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        Together together = Together.of(desk, files, prices.yard());
        return together.purchase().isPresent()
                ? look(desk, together.purchase().get(), priced.get(), noted.get())
                : together.code();
    }

    private boolean differ(Desk desk, Took noted, Ways.Prices priced) {
        boolean differ = !noted.currency().equals(priced.rates().currency());
        if (differ) {
            desk.say(took + ": amounts in " + noted.currency().code() + ", but the rates are in "
                    + priced.rates().currency().code() + "; write both in one currency");
        }
        return differ;
    }

    private int look(Desk desk, Purchase purchase, Ways.Prices priced, Took noted) throws FileTrouble {
        Quotation quotation = Quotation.of(purchase, priced.rates(), priced.ratesText(), priced.on());
        Afterwards after = quotation.afterwards(noted);
        if (folder.isPresent()) {
            for (Path written : Hindsight.write(quotation, after, Together.name(files), folder.get())) {
                desk.print(written + "\n");
            }
        } else {
            desk.print(Hindsight.text(after));
        }
        if (!after.isForThisQuote()) {
            desk.say(took + ": noted for the quote " + noted.inputs().orElseThrow() + ", held against " + after.inputs()
                    + ": job, price list, rates or day are not the same");
        }
        after.notNoted().forEach(words -> desk.say("not noted: " + words));
        if (ratesTo.isPresent()) {
            Hindsight.saveRates(prices.rates(), ratesTo.get(), after);
            desk.say("made " + ratesTo.get());
        }
        return after.notNoted().isEmpty() && after.isForThisQuote() ? ExitCode.DONE : ExitCode.FAILING;
    }
}
