package pitchboard.sheet.buying;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.money.Day;
import pitchboard.money.Money;

/**
 * What the sheet of changes and their prices is drawn from.
 *
 * @param rulebook its short name, as the other papers of the job have it
 * @param yard whose prices these are
 * @param date when they were given
 * @param rows cheapest first
 * @param without changes that no stair fits
 */
public record Weighed(
        Title title,
        Paper paper,
        String rulebook,
        String fingerprint,
        String yard,
        Day date,
        List<Row> rows,
        List<String> without) {
    public Weighed {
        rows = List.copyOf(rows);
        without = List.copyOf(without);
    }

    /**
     * @param boards what they cost; empty while a price is missing
     * @param whole the price of the whole job; empty without rates
     * @param more what the boards cost more than as it is
     * @param because what makes the difference
     */
    public record Row(
            String name,
            boolean isAsItIs,
            Optional<Money> boards,
            Optional<Money> whole,
            Optional<Money> more,
            String rules,
            String strength,
            String because) {}
}
