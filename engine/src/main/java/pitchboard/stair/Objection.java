package pitchboard.stair;

import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Decimals;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Pitch;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Reckoned;

/**
 * One thing against one candidate.
 *
 * @param id stable name of the kind of objection, such as {@code rise-at-most}
 * @param what what was measured, in words: {@code rise of a step}
 * @param measured its value on the candidate
 * @param limit the value it fails
 * @param citation who sets the limit
 * @param change what would make it fit, in the imperative: {@code add a riser}
 */
public record Objection(String id, String what, Quantity measured, Quantity limit, String citation, Phrase change) {
    /**
     * How far past the limit, as a part of the limit, to a millionth so that every machine ranks alike; the whole of
     * it when the limit is nothing.
     */
    double miss() {
        double by = Math.abs(size(measured) - size(limit));
        double of = Math.abs(size(limit));
        return Decimals.rounded(of < 1e-9 ? 1 : by / of, 6);
    }

    private static double size(Quantity quantity) {
        if (quantity instanceof Length length) {
            return length.approxMm();
        }
        if (quantity instanceof Ratio ratio) {
            return ratio.approx();
        }
        if (quantity instanceof Pitch pitch) {
            return pitch.degrees();
        }
        if (quantity instanceof Angle angle) {
            return angle.degrees().approx();
        }
        if (quantity instanceof Area area) {
            return area.squareInches().approx();
        }
        if (quantity instanceof Reckoned reckoned) {
            return reckoned.value();
        }
        return quantity instanceof Count count ? count.value() : quantity.equals(Found.RIGHT) ? 1 : 0;
    }
}
