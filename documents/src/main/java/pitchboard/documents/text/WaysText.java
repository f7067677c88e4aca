package pitchboard.documents.text;

import java.util.List;
import pitchboard.costing.LineKind;
import pitchboard.costing.Price;
import pitchboard.job.Quotation;
import pitchboard.job.Ways;
import pitchboard.measure.Tape;
import pitchboard.money.Money;
import pitchboard.sheet.quote.Choice;

/** Several ways of doing one job, for a terminal. */
public final class WaysText {
    private static final int NAME = 28;

    private final Lines out = new Lines();

    private WaysText() {}

    public static String write(Ways ways) {
        WaysText text = new WaysText();
        text.out.heading(ways.name() + "  (inputs " + ways.fingerprint().text() + ")");
        ways.stale().forEach(words -> text.out.item("  OLD PRICES  ", words));
        ways.ways().forEach(text::way);
        if (!ways.offered().isEmpty()) {
            text.choice(ways.choice());
        }
        return text.out.text();
    }

    private void row(String topic, String words) {
        out.item("  " + Lines.padded(topic, NAME) + " ", words);
    }

    private void way(Ways.Way way) {
        out.heading(way.said().name());
        row(
                "offered",
                way.whyNotOffered()
                        .map(why -> "NO: " + why)
                        .orElseGet(() -> way.failures().isEmpty()
                                ? "yes"
                                : "ALTHOUGH IT FAILS: " + way.said().although().orElseThrow()));
        row("rules", way.rules());
        row("strength", way.strength());
        way.failures().forEach(words -> row("", words));
        way.quotation().ifPresent(this::costs);
    }

    private void costs(Quotation quotation) {
        for (LineKind kind : LineKind.values()) {
            row(kind.words(), quotation.costing().sum(kind).map(Money::digits).orElse("no price"));
        }
        row(
                "price",
                quotation
                        .costing()
                        .price()
                        .map(Price::total)
                        .map(Money::toString)
                        .orElse("none"));
    }

    private void choice(Choice choice) {
        out.heading("What the customer chooses from");
        row(
                "",
                String.join(
                        "  |  ", choice.offered().stream().map(Choice.Way::name).toList()));
        lines(choice.different(Tape.Style.PLAIN));
        lines(choice.prices());
        out.heading("The same in all of them");
        choice.same(Tape.Style.PLAIN)
                .forEach(line -> row(line.topic(), line.cells().get(0)));
    }

    private void lines(List<Choice.Line> lines) {
        lines.forEach(line -> row(line.topic(), String.join("  |  ", line.cells())));
    }
}
