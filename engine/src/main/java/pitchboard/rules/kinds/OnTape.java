package pitchboard.rules.kinds;

import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/** Sizes for a remedy, moved to a line of the crew's tape on the side that still meets the limit. */
public final class OnTape {
    private OnTape() {}

    public static Length noLess(Stair stair, Length size) {
        return size.roundedUp(stair.brief().tape().graduation());
    }

    public static Length noMore(Stair stair, Length size) {
        return size.roundedDown(stair.brief().tape().graduation());
    }

    /** The first line of the tape beyond the size. */
    public static Length more(Stair stair, Length size) {
        return noMore(stair, size).plus(stair.brief().tape().graduation().step());
    }

    /** The last line of the tape before the size. */
    public static Length less(Stair stair, Length size) {
        return noLess(stair, size).minus(stair.brief().tape().graduation().step());
    }
}
