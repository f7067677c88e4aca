package pitchboard.documents.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pitchboard.costing.LineKind;
import pitchboard.costing.Price;
import pitchboard.costing.Scope;
import pitchboard.job.Outcome;
import pitchboard.job.Ways;
import pitchboard.measure.Tape;
import pitchboard.money.Money;

/** Several ways of doing one job, a column for each: how they stand, what is built, what it costs. */
public final class WaysCsv {
    private final Csv csv = new Csv();
    private final List<Ways.Way> ways;

    private WaysCsv(Ways ways) {
        this.ways = ways.ways();
    }

    public static String write(Ways ways) {
        WaysCsv csv = new WaysCsv(ways);
        csv.row(ways.name(), way -> way.said().name());
        csv.row("offered", way -> way.whyNotOffered().map(why -> "no: " + why).orElse("yes"));
        csv.row("rules", Ways.Way::rules);
        csv.row("strength", Ways.Way::strength);
        csv.row("although", way -> way.said().although().orElse(""));
        csv.scope();
        for (LineKind kind : LineKind.values()) {
            csv.row(
                    kind.words(),
                    way -> way.quotation()
                            .flatMap(each -> each.costing().sum(kind))
                            .map(Money::digits)
                            .orElse(""));
        }
        csv.price("overhead", Price::overhead);
        csv.price("profit", Price::profit);
        csv.price("taxes", Price::taxTotal);
        csv.price("rounding", Price::rounding);
        csv.price("price", Price::total);
        return csv.csv.text();
    }

    private void row(String topic, Function<Ways.Way, String> cell) {
        List<String> cells = new ArrayList<>(List.of(topic));
        ways.forEach(way -> cells.add(cell.apply(way)));
        csv.row(cells);
    }

    private void price(String topic, Function<Price, Money> amount) {
        row(
                topic,
                way -> way.quotation()
                        .flatMap(each -> each.costing().price())
                        .map(amount)
                        .map(Money::digits)
                        .orElse(""));
    }

    private void scope() {
        List<List<Scope.Item>> all = ways.stream()
                .map(way -> way.outcome().match(WaysCsv::items, none -> List.<Scope.Item>of()))
                .toList();
        List<String> topics = all.stream()
                .filter(items -> !items.isEmpty())
                .findFirst()
                .map(items -> items.stream().map(Scope.Item::topic).toList())
                .orElse(List.of());
        for (int i = 0; i < topics.size(); i++) {
            int topic = i;
            List<String> cells = new ArrayList<>(List.of(topics.get(i)));
            all.forEach(
                    items -> cells.add(items.isEmpty() ? "" : items.get(topic).words()));
            csv.row(cells);
        }
    }

    private static List<Scope.Item> items(Outcome.Designed job) {
        return Scope.of(job.stair(), job.parts(), Tape.Style.PLAIN);
    }
}
