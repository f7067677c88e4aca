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
import pitchboard.app.OpenedRates;
import pitchboard.app.Purchases;
import pitchboard.buying.yard.Yard;
import pitchboard.job.Purchase;
import pitchboard.job.WhatIf;
import pitchboard.money.Day;
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
            "  pitchboard buy loft.yaml --yard yard.yaml --what-if",
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

    @Option(
            names = "--what-if",
            description = "price other risers, runs, stringers and boards instead, each planned and judged; one job")
    private boolean whatIf;

    @Option(names = "--rates", paramLabel = "RATES", description = "with --what-if: rates, to price the whole job")
    private Optional<Path> rates = Optional.empty();

    @Option(names = "--on", paramLabel = "DAY", description = "with --rates: the day of the price, as in 2027-05-14")
    private Optional<String> day = Optional.empty();

    @Option(names = "--json", description = "print JSON for other programs")
    private boolean json;

    @Override
    public Integer call() throws FileTrouble {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        if (whatIf) {
            return whatIf(desk);
        }
        if (rates.isPresent() || day.isPresent()) {
            desk.say("--rates and --on go with --what-if; for the price of a job see: pitchboard quote");
            return ExitCode.NOT_UNDERSTOOD;
        }
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

    private int whatIf(Desk desk) throws FileTrouble {
        if (files.size() > 1) {
            desk.say(files.size() + " job files; --what-if changes one job at a time");
            return ExitCode.NOT_UNDERSTOOD;
        }
        if (rates.isPresent() != day.isPresent()) {
            desk.say("--rates and --on go together: prices grow old, so the whole job is priced on a day");
            return ExitCode.NOT_UNDERSTOOD;
        }
        Optional<WhatIf.Pricing> pricing = Optional.empty();
        if (rates.isPresent()) {
            pricing = pricing(desk, rates.get(), day.orElseThrow());
            if (pricing.isEmpty()) {
                return ExitCode.NOT_UNDERSTOOD;
            }
        }
        Together together = Together.of(desk, files, yard);
        return together.purchase().isPresent()
                ? whatIf(desk, together.purchase().get(), pricing)
                : together.code();
    }

    private static Optional<WhatIf.Pricing> pricing(Desk desk, Path rates, String day) throws FileTrouble {
        Optional<Day> on = Day.find(day);
        if (on.isEmpty()) {
            desk.say("--on: found `" + day + "`, expected a day written as year-month-day, such as 2027-05-14");
        }
        Optional<OpenedRates.Understood> opened = desk.openRates(rates);
        return on.flatMap(each -> opened.map(read -> new WhatIf.Pricing(read.rates(), read.text(), each)));
    }

    private int whatIf(Desk desk, Purchase purchase, Optional<WhatIf.Pricing> pricing) throws FileTrouble {
        Yard list = purchase.list().yard();
        if (pricing.isPresent() && !pricing.get().rates().currency().equals(list.currency())) {
            desk.say("rates and price list are in different currencies; write both in one");
            return ExitCode.NOT_UNDERSTOOD;
        }
        WhatIf weighed = WhatIf.of(purchase.jobs().get(0), list, purchase.priceList(), pricing);
        if (folder.isPresent()) {
            for (Path written : Purchases.write(weighed, Together.name(files), folder.get())) {
                desk.print(written + "\n");
            }
        } else {
            desk.print(json ? Purchases.json(weighed) : Purchases.text(weighed));
        }
        return purchase.list().isComplete() ? ExitCode.DONE : ExitCode.FAILING;
    }
}
