package pitchboard.strength.eurocode;

import pitchboard.measure.Length;
import pitchboard.strength.Answer;

/**
 * A notch at the support of a beam of solid timber, on the side of the support (EN 1995-1-1, 6.5.2).
 *
 * <pre>{@code
 *   kv = min(1, kn·(1 + 1.1·i^1.5 / √h) / (√h·(√(a·(1 − a)) + 0.8·(x / h)·√(1 / a − a²))))
 *   a = hef / h     h in mm     kn = 5 for solid timber
 * }</pre>
 *
 * @param depth {@code h} of the beam
 * @param left {@code hef}, depth that is left at the notch
 * @param away {@code x}, from the line of the reaction to the corner of the notch
 * @param incline {@code i}, of the notch: 0 for a square one
 */
public record Notch(Length depth, Length left, Length away, double incline) {
    private static final double SOLID = 5;

    /** {@code kv}, which lessens the shear strength of the depth that is left. */
    public Answer<Double> factor() {
        if (!left.isPositive() || left.isMoreThan(depth) || away.isNegative() || incline < 0) {
            return Answer.unknown("a notch leaves more than nothing and no more than the whole depth, and lies inward");
        }
        double h = depth.approxMm();
        double a = left.approxMm() / h;
        double root = Math.sqrt(h);
        double above = SOLID * (1 + 1.1 * Math.pow(incline, 1.5) / root);
        double below = root * (Math.sqrt(a * (1 - a)) + 0.8 * away.approxMm() / h * Math.sqrt(1 / a - a * a));
        return Answer.known(below == 0 ? 1.0 : Math.min(1, above / below));
    }
}
