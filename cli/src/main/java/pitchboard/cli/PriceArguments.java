package pitchboard.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import pitchboard.app.OpenedRates;
import pitchboard.app.OpenedYard;
import pitchboard.job.Ways;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.store.FileTrouble;

/** Where prices come from, and the day they are asked on. */
final class PriceArguments {
    @Option(names = "--yard", required = true, paramLabel = "LIST", description = "the price list, with the rack")
    private Path yard;

    @Option(names = "--rates", required = true, paramLabel = "RATES", description = "the crew's rates")
    private Path rates;

    @Option(
            names = "--on",
            required = true,
            paramLabel = "DAY",
            description = "the day of the quote, as in 2027-05-14; the program never looks at a clock")
    private String day;

    Path yard() {
        return yard;
    }

    Path rates() {
        return rates;
    }

    /** Opens both files; what cannot be understood is told, all of it, and nothing comes back. */
    Optional<Ways.Prices> open(Desk desk) throws FileTrouble {
        Optional<Day> on = day(desk);
        Optional<OpenedYard.Understood> list = desk.openYard(yard);
        Optional<OpenedRates.Understood> own = desk.openRates(rates);
        if (on.isEmpty()
                || list.isEmpty()
                || own.isEmpty()
                || differ(desk, own.get(), list.get().yard().currency())) {
            return Optional.empty();
        }
        return Optional.of(new Ways.Prices(
                list.get().yard(),
                list.get().text(),
                own.get().rates(),
                own.get().text(),
                on.get()));
    }

    /** The day that was asked for; what is no day is told. */
    Optional<Day> day(Desk desk) {
        Optional<Day> on = Day.find(day);
        if (on.isEmpty()) {
            desk.say("--on: found `" + day + "`, expected a day written as year-month-day, such as 2027-05-14");
        }
        return on;
    }

    /** Whether rates and price list are in two currencies, which is told. */
    boolean differ(Desk desk, OpenedRates.Understood own, Currency theirs) {
        Currency mine = own.rates().currency();
        if (!mine.equals(theirs)) {
            desk.say(rates + ": amounts in " + mine.code() + ", but the price list " + yard + " is in " + theirs.code()
                    + "; write both in one currency");
            return true;
        }
        return false;
    }
}
