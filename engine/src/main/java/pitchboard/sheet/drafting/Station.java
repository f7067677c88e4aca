package pitchboard.sheet.drafting;

import pitchboard.measure.Length;
import pitchboard.sheet.Spot;

/**
 * A place that a dimension string measures to.
 *
 * @param along its exact position along the measured direction, from any datum
 * @param at where it is on paper
 */
public record Station(Length along, Spot at) {
    public static Station of(Length along, Spot at) {
        return new Station(along, at);
    }
}
