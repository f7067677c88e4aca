package pitchboard.sheet.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import pitchboard.carry.Carried;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.carry.WayOut;
import pitchboard.carry.joints.Caution;
import pitchboard.carry.members.TreadSpacing;
import pitchboard.measure.Decimals;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.sheet.Box;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.strength.Factor;
import pitchboard.strength.Utilisation;

/** Every check with demand, capacity and factors; what would help; how far apart stringers may stand. */
final class CheckTables {
    private static final double BETWEEN = 6;

    private final Tape tape;
    private final Carried carried;
    private final MemberText text;

    CheckTables(Tape tape, Carried carried) {
        this.tape = tape;
        this.carried = carried;
        this.text = MemberText.on(tape, Tape.Style.PRINTED);
    }

    /** One table below the other, over as many pages as they need. */
    List<Draft> over(IntFunction<Draft> pages) {
        List<Draft> drafts = new ArrayList<>();
        double top = Double.NaN;
        for (Table table : tables()) {
            int next = 0;
            while (next < table.rowCount()) {
                if (drafts.isEmpty() || needsPage(drafts.get(drafts.size() - 1), top, table, next)) {
                    drafts.add(pages.apply(drafts.size() + 1));
                    top = drafts.get(drafts.size() - 1).room().top();
                }
                Draft page = drafts.get(drafts.size() - 1);
                Box left = page.room().withoutTop(top - page.room().top());
                Table.Drawn drawn = table.draw(page, left, next);
                next = drawn.next();
                top = next < table.rowCount() ? page.room().bottom() : drawn.bottom() + BETWEEN;
            }
        }
        return drafts;
    }

    /** A table begins where it fits whole, or where at least a quarter of the page is left for it. */
    private static boolean needsPage(Draft page, double top, Table table, int next) {
        double left = page.room().bottom() - top;
        return next > 0
                || left
                        < Math.min(
                                table.height(page.room().width()), page.room().height() / 4);
    }

    private List<Table> tables() {
        return List.of(checks(), waysOut(), spacings(), cautions(), factors()).stream()
                .filter(table -> table.rowCount() > 1)
                .toList();
    }

    private Table checks() {
        Table table = Table.of(
                Column.left("", 12).bold(),
                Column.left("what is checked", 46),
                Column.right("used", 13).bold(),
                Column.left("it is, and may be", 42),
                Column.left("under", 34),
                Column.left("factors", 28),
                Column.rest("what to do, or why not"),
                Column.left("by", 28).small());
        for (MemberFinding.Topic topic : MemberFinding.Topic.values()) {
            List<MemberFinding> about = carried.findings().stream()
                    .filter(finding -> finding.topic() == topic)
                    .toList();
            if (!about.isEmpty()) {
                table.heading(topic.title());
                about.forEach(finding -> table.row(cells(finding)));
            }
        }
        return table;
    }

    private String[] cells(MemberFinding finding) {
        return new String[] {
            finding.verdict().match(pass -> "pass", fail -> "FAIL", not -> "–", cannot -> "?"),
            finding.subject(),
            finding.ratio().map(CheckTables::percent).orElse(""),
            text.numbers(finding).orElse(""),
            finding.working().map(Utilisation::governing).orElse(""),
            finding.working().map(text::applied).orElse(""),
            text.next(finding),
            text.source(finding)
        };
    }

    private static String percent(double ratio) {
        return Decimals.fixed(ratio * 100, 0) + " %";
    }

    private Table waysOut() {
        Table table = Table.of(
                Column.left("", 22).bold(),
                Column.left("what would make the stringers carry", 92),
                Column.right("then used", 18).bold(),
                Column.right("hours more", 18),
                Column.rest("what follows from it"));
        table.heading("Each was reckoned through again. Least work first; hours are a rule of thumb for two people,"
                + " common practice, no source.");
        for (WayOut way : carried.waysOut()) {
            table.row(
                    way.helps() ? "helps" : "not enough",
                    text.words(way.what()),
                    percent(way.ratio()),
                    Decimals.trimmed(way.hours(), 2),
                    text.words(way.then()));
        }
        return table;
    }

    private Table spacings() {
        Table table = Table.of(
                Column.left("tread board", 40).bold(),
                Column.right("stringers at most apart", 44),
                Column.rest("what ends it"));
        table.heading("How far apart stringers may stand, middle to middle, under one board of this wood");
        for (TreadSpacing spacing : carried.spacings()) {
            table.row(
                    spacing.board(),
                    TapeWriter.write(spacing.greatest().roundedDown(tape.graduation()), tape, Tape.Style.PRINTED),
                    spacing.governedBy());
        }
        return table;
    }

    private Table cautions() {
        Table table = Table.of(
                Column.rest("beyond what was reckoned"), Column.left("by", 70).small());
        for (Caution caution : carried.cautions()) {
            String doubt = caution.source().confidence().caution();
            table.row(caution.text(), caution.source().citation() + (doubt.isEmpty() ? "" : "; " + doubt));
        }
        return table;
    }

    /** Each factor with each of its reasons once. */
    private Table factors() {
        Table table = Table.of(
                Column.left("factor", 18).bold(),
                Column.left("", 40),
                Column.right("value", 16),
                Column.rest("why"),
                Column.left("on", 70),
                Column.left("by", 50).small());
        table.heading("Every factor that was looked at, and why it applies or not");
        Map<Factor, List<String>> uses = new LinkedHashMap<>();
        carried.findings()
                .forEach(finding -> finding.working()
                        .ifPresent(working -> working.factors()
                                .forEach(factor -> uses.computeIfAbsent(factor, any -> new ArrayList<>())
                                        .add(finding.subject()))));
        uses.entrySet().stream()
                .sorted(Comparator.comparing(use -> use.getKey().symbol()))
                .forEach(use -> table.row(row(use.getKey(), use.getValue())));
        return table;
    }

    private static String[] row(Factor factor, List<String> on) {
        return new String[] {
            factor.symbol(),
            factor.name(),
            Decimals.trimmed(factor.value(), 3),
            factor.because(),
            String.join(", ", on.stream().distinct().toList()),
            source(factor)
        };
    }

    private static String source(Factor factor) {
        String caution = factor.source().confidence().caution();
        return factor.source().citation() + (caution.isEmpty() ? "" : "; " + caution);
    }
}
