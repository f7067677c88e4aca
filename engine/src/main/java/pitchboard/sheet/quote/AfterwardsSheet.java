package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.afterwards.Afterwards;
import pitchboard.afterwards.Took;
import pitchboard.costing.Price;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;
import pitchboard.sheet.Box;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** For the crew: what the job took against what was planned, and the planning figures that would have been right. */
final class AfterwardsSheet {
    private static final int PLACES = 3;
    private static final Lettering LETTERS = Lettering.ofCapitals(2.4);
    private static final double APART = 6;

    private final Afterwards after;
    private final Frame frame;

    private AfterwardsSheet(Afterwards after, Frame frame) {
        this.after = after;
        this.frame = frame;
    }

    static List<Draft> of(Afterwards after, Frame frame) {
        AfterwardsSheet sheet = new AfterwardsSheet(after, frame);
        List<Draft> pages = new ArrayList<>();
        double y = Double.MAX_VALUE;
        for (Table table : List.of(sheet.notNoted(), sheet.costs(), sheet.hours(), sheet.noted())) {
            y = sheet.set(table, pages, y) + APART;
        }
        return pages;
    }

    /** Below what is there, or on a page of its own where it does not fit there. */
    private double set(Table table, List<Draft> pages, double from) {
        double y = from;
        int next = 0;
        while (next < table.rowCount()) {
            boolean fits = !pages.isEmpty()
                    && y + table.height(frame.room().width()) <= frame.room().bottom();
            if (!fits) {
                pages.add(frame.draft("afterwards", pages.size() + 1, "Afterwards, for the crew"));
                y = frame.room().top();
            }
            Draft page = pages.get(pages.size() - 1);
            Box room = page.room();
            Table.Drawn drawn = table.draw(page, room.withoutTop(y - room.top()), next);
            next = drawn.next();
            y = next < table.rowCount() ? Double.MAX_VALUE : drawn.bottom();
        }
        return table.rowCount() == 0 ? from - APART : y;
    }

    /** What is missing before the sums are the whole. */
    private Table notNoted() {
        Table table = Table.of(Column.left("", 40).bold(), Column.rest("")).lettered(LETTERS);
        after.notNoted().forEach(words -> table.row("NOT NOTED", words + "; sums are without it"));
        if (!after.isForThisQuote()) {
            table.row(
                    "ANOTHER QUOTE",
                    "the work was noted for the quote with the inputs "
                            + after.took().inputs().orElseThrow() + "; it is held against " + after.inputs());
        }
        return table;
    }

    private Table costs() {
        Table table = Table.of(
                        Column.left("in " + after.took().currency().code(), 70).bold(),
                        Column.right("planned", 34),
                        Column.right("taken", 34),
                        Column.right("difference", 34).bold(),
                        Column.rest(""))
                .lettered(LETTERS);
        for (Afterwards.KindLine line : after.kinds()) {
            table.row(
                    line.kind().words(),
                    line.planned().map(Money::digits).orElse("no price"),
                    line.taken().map(Money::digits).orElse("not noted"),
                    line.difference().map(AfterwardsSheet::signed).orElse(""),
                    "");
        }
        Optional<Money> planned = after.planned().price().map(Price::direct);
        table.row(
                "all costs",
                planned.map(Money::digits).orElse("none"),
                after.cost().digits(),
                planned.map(before -> signed(after.cost().minus(before))).orElse(""),
                "");
        left(table);
        return table;
    }

    private void left(Table table) {
        after.plannedLeft()
                .ifPresent(planned -> after.left()
                        .ifPresent(left -> table.row(
                                "left for overhead and profit",
                                planned.digits(),
                                left.digits(),
                                signed(left.minus(planned)),
                                "of " + after.paid().orElseThrow().digits() + " paid, taxes as in the quote")));
    }

    private Table hours() {
        Table table = Table.of(
                        Column.left("hours of the crew", 46).bold(),
                        Column.right("counted", 22),
                        Column.right("done", 22),
                        Column.right("planned", 22),
                        Column.right("taken", 26),
                        Column.right("difference", 26).bold(),
                        Column.right("each, planned", 46),
                        Column.right("each, right", 30).bold())
                .lettered(LETTERS);
        for (Afterwards.TaskLine line : after.tasks()) {
            table.row(
                    line.task().words(),
                    text(line.counted()),
                    text(line.done()),
                    text(line.planned()),
                    line.taken().map(AfterwardsSheet::text).orElse("not noted"),
                    line.difference().map(AfterwardsSheet::signed).orElse(""),
                    text(line.plannedEach()) + (line.fromMemory() ? " (from memory)" : ""),
                    line.rightEach().map(AfterwardsSheet::text).orElse(""));
        }
        return table;
    }

    /** Every line as somebody noted it, so that it can be looked up who knows more. */
    private Table noted() {
        Table table = Table.of(
                        Column.left("as it was noted", 30),
                        Column.rest(""),
                        Column.left("", 60),
                        Column.right("hours x people", 34),
                        Column.right("cost", 34))
                .lettered(LETTERS);
        for (Took.Worked worked : after.took().worked()) {
            int people = worked.people().orElse(after.planned().rates().people());
            table.row(
                    worked.day().words(),
                    worked.task().words(),
                    worked.who(),
                    text(worked.hours()) + " x " + people,
                    "");
        }
        for (Took.Spent spent : after.took().spent()) {
            table.row(
                    spent.day().words(),
                    spent.kind().words() + ": " + spent.what(),
                    spent.who(),
                    "",
                    spent.cost().digits());
        }
        return table;
    }

    private static String text(Ratio number) {
        return Decimals.trimmed(number, PLACES);
    }

    private static String signed(Ratio number) {
        return (number.signum() > 0 ? "+" : "") + text(number);
    }

    private static String signed(Money money) {
        return (money.isNegative() || money.isZero() ? "" : "+") + money.digits();
    }
}
