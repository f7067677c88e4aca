package pitchboard.strength.fasteners;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Stress;

/**
 * One of the pieces a fastener joins.
 *
 * @param bearing how hard the fastener may press on it, Fe
 * @param length over which it presses: the thickness, or how deep the fastener goes in
 * @param angle of the load to the grain, in degrees from 0 to 90; 0 for steel
 */
public record Member(Stress bearing, Length length, double angle, Source source) {
    public Member {
        if (!length.isPositive() || !(bearing.nPerMm2() > 0) || !(angle >= 0 && angle <= 90)) {
            throw new IllegalArgumentException("a member has a bearing strength, a length, and an angle of 0 to 90°");
        }
    }

    /**
     * Sawn wood.
     *
     * @param gravity specific gravity, oven dry, 0.31 to 0.73
     * @param angle of the load to the grain, in degrees
     */
    public static Answer<Member> wood(double gravity, Fastener fastener, Length length, double angle) {
        return DowelBearing.atAngle(gravity, fastener.nominal(), angle)
                .map(bearing -> new Member(bearing, length, angle, DowelBearing.SOURCE));
    }

    /** Plate of hot-rolled A36 steel: 87,000 psi. */
    public static Member hotRolledSteel(Length thickness) {
        return new Member(Stress.psi(87_000), thickness, 0, DowelBearing.SOURCE);
    }

    /** Sheet of cold-formed A653 grade 33 steel: 61,850 psi. */
    public static Member coldFormedSteel(Length thickness) {
        return new Member(Stress.psi(61_850), thickness, 0, DowelBearing.SOURCE);
    }

    double inches() {
        return length.approxMm() / 25.4;
    }
}
