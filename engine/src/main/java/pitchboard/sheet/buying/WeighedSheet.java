package pitchboard.sheet.buying;

import java.util.List;
import java.util.Optional;
import pitchboard.money.Money;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** What other risers, runs, stringers and boards would cost, cheapest first, with what rules and strength say beside. */
public final class WeighedSheet {
    private static final String CAUTION =
            "Every line is a stair of its own, planned and bought anew. A cheaper stair that fails a rule or does not carry "
                    + "is no choice; strength is reckoned with the wood the job names, whatever wood is priced.";

    private WeighedSheet() {}

    public static List<Sheet> draw(Weighed weighed) {
        Frame frame = new Frame(
                weighed.paper(), new TitleBlock(weighed.title(), weighed.rulebook(), weighed.fingerprint(), CAUTION));
        boolean whole = weighed.rows().stream().anyMatch(row -> row.whole().isPresent());
        Table table = Table.of(
                        Column.left("changed", 52).bold(),
                        Column.right("boards", 20),
                        Column.right("more", 18),
                        Column.right(whole ? "whole job" : "", whole ? 22 : 2),
                        Column.left("rules", 46),
                        Column.left("strength", 46),
                        Column.rest("because"))
                .lettered(Lettering.ofCapitals(2.2));
        table.heading("One thing changed at a time, cheapest first; prices of " + weighed.yard() + ", given "
                + weighed.date() + ", without tax and delivery");
        for (Weighed.Row row : weighed.rows()) {
            table.row(
                    row.name(),
                    money(row.boards()),
                    row.isAsItIs() ? "" : row.more().map(WeighedSheet::signed).orElse(""),
                    row.whole().map(Money::digits).orElse(whole ? "no price" : ""),
                    row.rules(),
                    row.strength(),
                    row.because());
        }
        if (!weighed.without().isEmpty()) {
            table.heading("No stair fits: " + String.join("; ", weighed.without()));
        }
        return frame.bind(table.over(page -> frame.draft(page == 1 ? "what-if" : "what-if-" + page, "What if")));
    }

    private static String money(Optional<Money> money) {
        return money.map(Money::digits).orElse("no price");
    }

    private static String signed(Money more) {
        return (more.isNegative() || more.isZero() ? "" : "+") + more.digits();
    }
}
