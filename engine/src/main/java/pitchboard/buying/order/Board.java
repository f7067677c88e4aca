package pitchboard.buying.order;

import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.RackPiece;
import pitchboard.measure.Length;
import pitchboard.money.Money;

/**
 * One board and its cuts, in the order of sawing.
 *
 * @param length as it measures
 * @param trim cut off first
 * @param bad how much of the far end is split or stamped, and not cut into; zero when nothing is
 * @param left what remains behind the last cut, its own untrimmed end included; zero when nothing does
 * @param isKept whether what remains goes on the rack
 */
public record Board(
        Origin origin, Length length, Length trim, Length bad, List<Cut> cuts, Length left, boolean isKept) {
    public Board {
        cuts = List.copyOf(cuts);
    }

    /** Where a board comes from. */
    public sealed interface Origin {
        /** @param price to the coin; empty when nobody gave one */
        record FromYard(BoardLength sold, Optional<Money> price) implements Origin {}

        record FromRack(RackPiece piece) implements Origin {}
    }

    public boolean isBought() {
        return origin instanceof Origin.FromYard;
    }

    /** Of a board from the rack, nothing. */
    public Optional<Money> price() {
        return origin instanceof Origin.FromYard yard ? yard.price() : Optional.empty();
    }
}
