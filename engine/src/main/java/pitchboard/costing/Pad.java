package pitchboard.costing;

import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/** A pad to be poured under the foot. */
public record Pad(Length length, Length width, Length thickness) {
    public Ratio cubicFeet() {
        Length foot = Length.feet(1);
        return length.over(foot).times(width.over(foot)).times(thickness.over(foot));
    }
}
