package pitchboard.documents.text;

import java.util.Optional;
import pitchboard.afterwards.Afterwards;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/** What a job took against what was planned, for a terminal. */
public final class AfterwardsText {
    private static final int NAME = 30;
    private static final int NUMBER = 11;

    private final Lines out = new Lines();

    private AfterwardsText() {}

    public static String write(Afterwards after) {
        AfterwardsText text = new AfterwardsText();
        text.out.heading(after.took().name() + ", what it took  (inputs " + after.inputs() + ")");
        after.notNoted().forEach(words -> text.out.item("  NOT NOTED  ", words + "; sums are without it"));
        text.costs(after);
        text.hours(after);
        return text.out.text();
    }

    private void row(String name, String... numbers) {
        StringBuilder line = new StringBuilder("  " + Lines.padded(name, NAME));
        for (String number : numbers) {
            line.append(' ').append(Lines.right(number, NUMBER));
        }
        out.item(line.toString(), "");
    }

    private void costs(Afterwards after) {
        out.heading("Costs in " + after.took().currency().code());
        row("", "planned", "taken", "difference");
        for (Afterwards.KindLine line : after.kinds()) {
            row(line.kind().words(), money(line.planned()), money(line.taken()), money(line.difference()));
        }
        Optional<Money> planned = after.planned().price().map(price -> price.direct());
        row("all costs", money(planned), after.cost().digits(), money(planned.map(after.cost()::minus)));
        Optional<Money> left = after.left();
        row(
                "left for overhead and profit",
                money(after.plannedLeft()),
                money(left),
                money(after.plannedLeft().flatMap(before -> left.map(now -> now.minus(before)))));
    }

    private void hours(Afterwards after) {
        out.heading("Hours of the crew by the clock");
        row("", "planned", "taken", "difference", "each", "right each");
        for (Afterwards.TaskLine line : after.tasks()) {
            row(
                    line.task().words(),
                    text(line.planned()),
                    number(line.taken()),
                    number(line.difference()),
                    text(line.plannedEach()),
                    number(line.rightEach()));
        }
    }

    private static String money(Optional<Money> money) {
        return money.map(Money::digits).orElse("-");
    }

    private static String number(Optional<Ratio> number) {
        return number.map(AfterwardsText::text).orElse("-");
    }

    private static String text(Ratio number) {
        return Decimals.trimmed(number, 3);
    }
}
