package pitchboard.rules.kinds.members;

import pitchboard.brief.Stringers;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/** How far apart the stringers stand, middle to middle. */
final class Spacing {
    private Spacing() {}

    static Length of(Stair stair) {
        return between(stair).dividedBy(stair.brief().stringers().count() - 1L);
    }

    /** The fewest that stand no farther apart than this. */
    static Count stringersFor(Stair stair, Length most) {
        int spaces = between(stair).over(most).negated().floor().negate().intValueExact();
        return new Count(Math.max(2, spaces + 1));
    }

    /** From the middle of the first to the middle of the last. */
    private static Length between(Stair stair) {
        Stringers stringers = stair.brief().stringers();
        return stair.brief()
                .width()
                .minus(stringers.treadOverhang().times(2))
                .minus(stringers.stock().thickness());
    }
}
