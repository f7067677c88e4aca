package pitchboard.buying.yard;

import pitchboard.measure.Length;
import pitchboard.money.Money;

/** What a board costs. */
public sealed interface Price {
    /** For the board, whatever its length. */
    record PerBoard(Money money) implements Price {}

    /** For every foot, or metre, of its nominal length. */
    record PerLength(Money money, Length length) implements Price {}

    /** For one board of this nominal length, to the coin; half a coin goes up, as a till rounds. */
    default Money of(Length nominal) {
        if (this instanceof PerLength each) {
            return each.money().times(nominal.over(each.length()));
        }
        return ((PerBoard) this).money().toCoin();
    }
}
