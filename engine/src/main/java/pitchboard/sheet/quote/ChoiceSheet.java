package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import pitchboard.costing.Costing;
import pitchboard.costing.Extra;
import pitchboard.costing.Scope;
import pitchboard.measure.Tape;
import pitchboard.sheet.Box;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Fitting;
import pitchboard.sheet.type.Lettering;

/** What the customer chooses from: a column for each option with its drawing, what differs, its price and its line. */
final class ChoiceSheet {
    private static final double TOPIC = 44;
    private static final double DRAWINGS = 66;
    private static final double CHOOSING = 27;
    private static final double CHECK = 3.6;
    private static final Lettering LETTERS = Lettering.ofCapitals(2.4);

    private final Choice choice;
    private final List<Choice.Way> ways;
    private final Costing costing;
    private final Frame frame;
    private final List<Draft> pages = new ArrayList<>();

    private ChoiceSheet(Choice choice, Frame frame) {
        this.choice = choice;
        this.ways = choice.offered();
        this.costing = choice.findCosting().orElseThrow();
        this.frame = frame;
    }

    /** @param choice with at least one way that is offered */
    static List<Draft> of(Choice choice, Frame frame) {
        ChoiceSheet sheet = new ChoiceSheet(choice, frame);
        Draft first = sheet.page();
        Box room = sheet.room(first).withoutTop(sheet.head(first));
        sheet.drawings(first, room.topPart(DRAWINGS));
        double y = room.top() + DRAWINGS + 2;
        for (Table table : List.of(sheet.side(), sheet.together())) {
            y = sheet.set(table, y) + 3;
        }
        sheet.choosing(sheet.pages.get(sheet.pages.size() - 1));
        return sheet.pages;
    }

    private Draft page() {
        Draft page = frame.draft("options", pages.size() + 1, "Options");
        pages.add(page);
        return page;
    }

    /** The foot of every page stays free for those who choose: the last one needs it. */
    private Box room(Draft page) {
        return page.room().withoutBottom(CHOOSING);
    }

    private double head(Draft page) {
        double height = new QuoteEnds(page)
                .head(costing, choice.title().client(), choice.title().place());
        Box room = page.room();
        page.add(Fitting.line(choice.name(), Lettering.TITLE, 96)
                .at(PartRef.NONE, Spot.of(room.right(), room.top() + Lettering.TITLE.capHeight()), 0, Align.RIGHT));
        return height;
    }

    private double column(Box room) {
        return (room.width() - TOPIC) / ways.size();
    }

    private Box column(Box room, int number) {
        double width = column(room);
        return new Box(room.left() + TOPIC + number * width, room.top(), width, room.height());
    }

    private void drawings(Draft page, Box room) {
        for (int i = 0; i < ways.size(); i++) {
            Offer offer = ways.get(i).offer().orElseThrow();
            StairDrawing.side(
                    page, offer.stairs().get(0).stair(), column(room, i).inset(2, 0));
        }
    }

    /** Sets a table below what is there, on this page or on further ones; returns where it ends. */
    private double set(Table table, double from) {
        double y = from;
        int next = 0;
        while (next < table.rowCount()) {
            Draft page = pages.get(pages.size() - 1);
            Box room = room(page);
            boolean fits = next > 0 || y + table.height(room.width()) <= room.bottom();
            if (!fits && y > room.top()) {
                page = page();
                y = room.top();
            }
            Table.Drawn drawn = table.draw(page, room(page).withoutTop(y - room.top()), next);
            next = drawn.next();
            y = drawn.bottom();
            if (next < table.rowCount()) {
                page();
                y = room.top();
            }
        }
        return y;
    }

    /** What differs, and the prices. */
    private Table side() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.left("", TOPIC).bold());
        ways.forEach(way -> columns.add(Column.rest(way.name())));
        Table table = Table.of(columns.toArray(new Column[0])).lettered(LETTERS);
        row(table, "", ways.stream().map(Choice.Way::says).toList());
        choice.different(Tape.Style.PRINTED).forEach(line -> row(table, line.topic(), line.cells()));
        List<Choice.Line> prices = choice.prices();
        row(
                table,
                prices.get(0).topic(),
                prices.get(0).cells().stream().map(price -> "**" + price + "**").toList());
        prices.stream().skip(1).forEach(line -> row(table, line.topic(), line.cells()));
        row(table, "offered although", ways.stream().map(ChoiceSheet::although).toList());
        return table;
    }

    private static void row(Table table, String topic, List<String> cells) {
        if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
            List<String> all = new ArrayList<>(List.of(topic));
            all.addAll(cells);
            table.row(PartRef.NONE, all);
        }
    }

    private static String although(Choice.Way way) {
        return way.failures().isEmpty()
                ? ""
                : "as drawn it does not meet every rule or check of strength. "
                        + way.although().orElseThrow();
    }

    /** What is the same in all of them, and what holds for all. */
    private Table together() {
        Table table = Table.of(Column.left("", TOPIC).bold(), Column.rest("")).lettered(LETTERS);
        List<Choice.Line> same = choice.same(Tape.Style.PRINTED);
        if (!same.isEmpty()) {
            table.heading(ways.size() == 1 ? "What we build" : "The same in all of them");
        }
        same.forEach(line -> table.row(line.topic(), line.cells().get(0)));
        costing.rates().pad().ifPresent(pad -> table.row("pad", "of concrete, dug and poured"));
        under(
                table,
                "with it",
                costing.rates().extras().stream().map(Extra::what).toList());
        table.heading("What holds between us");
        under(table, "terms", costing.rates().wording().terms());
        List<String> exclusions = new ArrayList<>(costing.rates().wording().exclusions());
        ways.stream()
                .flatMap(way -> way.offer().orElseThrow().stairs().stream())
                .flatMap(built -> Scope.notPriced(built.stair(), built.parts()).stream())
                .distinct()
                .forEach(exclusions::add);
        under(table, "not in the prices", exclusions);
        return table;
    }

    private static void under(Table table, String topic, List<String> sentences) {
        String beside = topic;
        for (String sentence : sentences) {
            table.row(beside, sentence);
            beside = "";
        }
    }

    /** A box to tick and a line to sign for each option. */
    private void choosing(Draft page) {
        Box foot = page.room().bottomPart(CHOOSING - 2);
        page.pencil().text(Spot.of(foot.left(), foot.top() + 6), "We choose", Lettering.NAME, Align.LEFT);
        for (int i = 0; i < ways.size(); i++) {
            Box column = column(foot, i);
            new Signs(page.pencil()).checkBox(Spot.of(column.left() + 1.4, foot.top() + 3), CHECK);
            double words = column.left() + CHECK + 3.4;
            page.add(Fitting.line(ways.get(i).name(), Lettering.NAME, column.width() - CHECK - 5)
                    .at(PartRef.NONE, Spot.of(words, foot.top() + 6), 0, Align.LEFT));
            page.pencil()
                    .text(
                            Spot.of(words, foot.top() + 10.4),
                            "for " + ways.get(i).price().orElseThrow().total(),
                            Lettering.NOTE,
                            Align.LEFT);
            line(page, column.left() + 1.4, column.width() - 6, foot.bottom() - 5, "for the customer, with the date");
        }
        line(page, foot.left(), TOPIC - 5, foot.bottom() - 5, "for the crew, with the date");
    }

    private static void line(Draft page, double left, double width, double y, String words) {
        page.pencil().line(Pen.PENCIL, Spot.of(left, y), Spot.of(left + width, y));
        page.pencil().text(Spot.of(left, y + 4), words, Lettering.NOTE, Align.LEFT);
    }
}
