package pitchboard.buying.yard;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.money.Money;

/**
 * One kind of board.
 *
 * @param name as the yard calls it, such as {@code 2x12}
 * @param thickness as it measures
 * @param width as it measures
 * @param wood species, grade and treatment, as the yard tells them; may be empty
 * @param uses what it is meant for; empty for anything
 * @param over how much longer a board really is than it is called
 * @param bad an end of every board that is split or stamped
 * @param price where a length has none of its own
 */
public record Stock(
        String name,
        Length thickness,
        Length width,
        Wood wood,
        List<Use> uses,
        Length over,
        BadEnd bad,
        Optional<Price> price,
        List<BoardLength> lengths) {
    public Stock {
        uses = List.copyOf(uses);
        lengths = List.copyOf(lengths);
    }

    /** Whether a piece of this section can be got from it, by ripping it if need be. */
    public boolean yields(Use use, Length thin, Length wide) {
        return (uses.isEmpty() || uses.contains(use))
                && Length.min(thickness, width).equals(Length.min(thin, wide))
                && Length.max(thickness, width).isAtLeast(Length.max(thin, wide));
    }

    /** Empty words where the yard does not say. */
    public record Wood(String species, String grade, String treatment) {
        /** All that is said, one after the other. */
        public String words() {
            return String.join(
                    ", ",
                    List.of(species, grade, treatment).stream()
                            .filter(word -> !word.isEmpty())
                            .toList());
        }
    }

    /** The price of one board of this length; empty when nobody gave one. */
    public Optional<Money> priceOf(BoardLength length) {
        return length.price().or(() -> price).map(each -> each.of(length.nominal()));
    }

    public Length realLength(BoardLength length) {
        return length.nominal().plus(over);
    }
}
