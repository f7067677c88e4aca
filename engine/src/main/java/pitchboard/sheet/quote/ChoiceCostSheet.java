package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pitchboard.costing.LineKind;
import pitchboard.costing.Price;
import pitchboard.money.Money;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** For the crew: how every option stands with the rules and with strength, whether it is offered, and what it costs. */
final class ChoiceCostSheet {
    private final Choice choice;

    private ChoiceCostSheet(Choice choice) {
        this.choice = choice;
    }

    static List<Draft> of(Choice choice, Frame frame) {
        return new ChoiceCostSheet(choice)
                .table()
                .over(page -> frame.draft("side-by-side", page, "Options, for the crew"));
    }

    private Table table() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.left("", 40).bold());
        choice.ways().forEach(way -> columns.add(Column.rest(way.name())));
        Table table = Table.of(columns.toArray(new Column[0])).lettered(Lettering.ofCapitals(2.4));
        row(
                table,
                "offered",
                way -> way.whyNot()
                        .map(why -> "**NO**: " + why)
                        .orElseGet(() -> way.failures().isEmpty()
                                ? "yes"
                                : "**ALTHOUGH IT FAILS**: " + way.although().orElseThrow()));
        row(table, "rules", Choice.Way::rules);
        row(table, "strength", Choice.Way::strength);
        for (LineKind kind : LineKind.values()) {
            row(
                    table,
                    kind.words(),
                    way -> way.offer()
                            .map(offer ->
                                    offer.costing().sum(kind).map(Money::digits).orElse("no price"))
                            .orElse(""));
        }
        price(table, "cost", price -> price.direct().digits());
        price(table, "overhead", price -> price.overhead().digits());
        price(table, "profit", price -> price.profit().digits());
        price(table, "taxes", price -> price.taxTotal().digits());
        price(table, "rounding", price -> price.rounding().digits());
        price(table, "price", price -> "**" + price.total().digits() + "**");
        row(table, "all that fails", way -> String.join("\n", way.failures()));
        return table;
    }

    private void row(Table table, String topic, Function<Choice.Way, String> cell) {
        List<String> cells = new ArrayList<>(List.of(topic));
        choice.ways().forEach(way -> cells.add(cell.apply(way)));
        if (cells.stream().skip(1).anyMatch(words -> !words.isEmpty())) {
            table.row(PartRef.NONE, cells);
        }
    }

    private void price(Table table, String topic, Function<Price, String> cell) {
        row(table, topic, way -> way.price().map(cell).orElse("none"));
    }
}
