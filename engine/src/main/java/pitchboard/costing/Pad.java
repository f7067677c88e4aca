package pitchboard.costing;

import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/**
 * A pad to be poured under the foot.
 *
 * @param gravel how thick a bed lies under it; zero for none
 */
public record Pad(Length length, Length width, Length thickness, Length gravel) {
    public Ratio cubicFeet() {
        return cubicFeet(thickness);
    }

    /** Of the bed, before it is tamped. */
    public Ratio gravelCubicFeet() {
        return cubicFeet(gravel);
    }

    private Ratio cubicFeet(Length thick) {
        Length foot = Length.feet(1);
        return length.over(foot).times(width.over(foot)).times(thick.over(foot));
    }
}
