package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.Yard;
import pitchboard.costing.Rates;
import pitchboard.intake.offers.Offered;
import pitchboard.money.Day;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.quote.Choice;
import pitchboard.sheet.quote.ChoicePapers;

/**
 * Several ways of doing one job, each planned, judged, bought for and costed as a job of its own.
 *
 * @param fingerprint of all jobs, price list, rates and day
 */
public record Ways(String name, List<Way> ways, Fingerprint fingerprint) {
    public Ways {
        ways = List.copyOf(ways);
    }

    /**
     * One way.
     *
     * @param quotation empty when no stair fits
     */
    public record Way(Offered.Way said, Outcome outcome, Optional<Quotation> quotation) {
        /** Rules that fail and members that do not carry. */
        public List<String> failures() {
            return outcome.match(Cautions::failures, none -> List.of());
        }

        /** Why the customer does not get to see it; empty when he does. */
        public Optional<String> whyNotOffered() {
            if (quotation.isEmpty()) {
                return Optional.of("no stair fits");
            }
            if (!quotation.get().costing().isComplete()) {
                return Optional.of("a price is missing: "
                        + String.join("; ", quotation.get().costing().missing()));
            }
            return failures().isEmpty() || said.although().isPresent()
                    ? Optional.empty()
                    : Optional.of("it " + failures().get(0) + more(failures().size() - 1));
        }

        private static String more(int more) {
            return more == 0 ? "" : "; and " + more + " more";
        }

        public String rules() {
            return outcome.match(Cautions::rules, none -> "no stair fits");
        }

        public String strength() {
            return outcome.match(Cautions::strength, none -> "no stair fits");
        }
    }

    /**
     * What it is priced from.
     *
     * @param yardText the text the price list was read from, for the fingerprint
     * @param ratesText the text the rates were read from, for the fingerprint
     * @param on the day of the quote
     */
    public record Prices(Yard yard, String yardText, Rates rates, String ratesText, Day on) {}

    /**
     * Plans, judges and costs every way.
     *
     * @param jobs one for each way
     * @throws IllegalArgumentException when price list and rates are in different currencies
     */
    public static Ways of(Offered offered, List<Job> jobs, Prices prices) {
        List<Way> ways = new ArrayList<>();
        StringBuilder inputs = new StringBuilder();
        for (int i = 0; i < jobs.size(); i++) {
            Way way = way(offered.ways().get(i), jobs.get(i), prices);
            ways.add(way);
            inputs.append(way.said().name()).append('\n');
            inputs.append(jobs.get(i).fingerprint().text()).append('\n');
            inputs.append(way.quotation().map(each -> each.fingerprint().text()).orElse(""))
                    .append('\n');
        }
        return new Ways(offered.name(), ways, Fingerprint.of(inputs.toString()));
    }

    private static Way way(Offered.Way said, Job job, Prices prices) {
        Outcome outcome = Pipeline.solve(job);
        Optional<Quotation> quotation = outcome.match(
                designed -> {
                    Purchase purchase = Purchase.of(List.of(designed), prices.yard(), prices.yardText());
                    return Optional.of(Quotation.of(purchase, prices.rates(), prices.ratesText(), prices.on()));
                },
                none -> Optional.empty());
        return new Way(said, outcome, quotation);
    }

    /** Which prices are older than the crew trusts them, in words. */
    public List<String> stale() {
        return ways.stream()
                .flatMap(way -> way.quotation().stream())
                .flatMap(each -> each.costing().stale().stream())
                .distinct()
                .toList();
    }

    /** Those that a customer chooses from. */
    public List<Way> offered() {
        return ways.stream().filter(way -> way.whyNotOffered().isEmpty()).toList();
    }

    /** Whether every way is offered, and none in spite of something. */
    public boolean isSound() {
        return ways.stream()
                .allMatch(way -> way.whyNotOffered().isEmpty() && way.failures().isEmpty());
    }

    /** For the crew: all ways side by side, and every figure of each. */
    public List<Sheet> crewSheets() {
        return ChoicePapers.crew(choice());
    }

    /** For the customer; empty while nothing can be offered. */
    public List<Sheet> customerSheets() {
        return ChoicePapers.customer(choice());
    }

    /** The same as the papers are drawn from. */
    public Choice choice() {
        Job first = ways.get(0).outcome().job();
        return new Choice(
                name,
                first.brief().title(),
                first.brief().paper(),
                first.rulebook().edition().shortName(),
                fingerprint.text(),
                ways.stream().map(Ways::drawn).toList());
    }

    private static Choice.Way drawn(Way way) {
        return new Choice.Way(
                way.said().name(),
                way.said().says(),
                way.said().although(),
                way.quotation().map(Quotation::offer),
                way.rules(),
                way.strength(),
                way.failures(),
                way.whyNotOffered());
    }
}
