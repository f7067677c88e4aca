package pitchboard.documents.csv;

import java.util.Optional;
import pitchboard.afterwards.Afterwards;
import pitchboard.afterwards.Took;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/** What a job took against what was planned. */
public final class AfterwardsCsv {
    private static final int PLACES = 4;

    private AfterwardsCsv() {}

    /** A row for each task. */
    public static String hours(Afterwards after) {
        Csv csv = new Csv()
                .row(
                        "task",
                        "counted",
                        "done",
                        "planned hours",
                        "hours taken",
                        "difference",
                        "planned for each",
                        "from memory",
                        "right for each");
        for (Afterwards.TaskLine line : after.tasks()) {
            csv.row(
                    line.task().words(),
                    text(line.counted()),
                    text(line.done()),
                    text(line.planned()),
                    number(line.taken()),
                    number(line.difference()),
                    text(line.plannedEach()),
                    line.fromMemory() ? "yes" : "no",
                    number(line.rightEach()));
        }
        return csv.text();
    }

    /** A row for each kind of cost, and what is left of the price. */
    public static String costs(Afterwards after) {
        String code = after.took().currency().code();
        Csv csv = new Csv().row("kind", "planned " + code, "taken " + code, "difference " + code);
        for (Afterwards.KindLine line : after.kinds()) {
            csv.row(line.kind().words(), money(line.planned()), money(line.taken()), money(line.difference()));
        }
        csv.row(
                "left for overhead and profit",
                money(after.plannedLeft()),
                money(after.left()),
                money(after.plannedLeft().flatMap(before -> after.left().map(now -> now.minus(before)))));
        return csv.text();
    }

    /** A row for each note. */
    public static String noted(Afterwards after) {
        Took took = after.took();
        Csv csv = new Csv()
                .row(
                        "date",
                        "task or kind",
                        "what",
                        "hours",
                        "people",
                        "cost " + took.currency().code(),
                        "who");
        for (Took.Worked worked : took.worked()) {
            int people = worked.people().orElse(after.planned().rates().people());
            csv.row(
                    worked.day().toString(),
                    worked.task().words(),
                    "",
                    text(worked.hours()),
                    Integer.toString(people),
                    "",
                    worked.who());
        }
        for (Took.Spent spent : took.spent()) {
            csv.row(
                    spent.day().toString(),
                    spent.kind().words(),
                    spent.what(),
                    "",
                    "",
                    spent.cost().digits(),
                    spent.who());
        }
        return csv.text();
    }

    private static String money(Optional<Money> money) {
        return money.map(Money::digits).orElse("");
    }

    private static String number(Optional<Ratio> number) {
        return number.map(AfterwardsCsv::text).orElse("");
    }

    private static String text(Ratio number) {
        return Decimals.trimmed(number, PLACES);
    }
}
