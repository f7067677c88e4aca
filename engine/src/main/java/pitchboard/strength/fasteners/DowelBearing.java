package pitchboard.strength.fasteners;

import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Stress;
import pitchboard.strength.timber.Nds;

/** How hard a fastener may press on wood, NDS 2018 Table 12.3.3 and its footnote; tables round to 50 psi, and so do we. */
public final class DowelBearing {
    static final Source SOURCE = Nds.SPECIFICATION.read("Table 12.3.3");

    private static final double ROUNDED_TO = 50;
    private static final double LEAST_GRAVITY = 0.31;
    private static final double MOST_GRAVITY = 0.73;

    private DowelBearing() {}

    /**
     * At an angle to the grain: one value for thin fasteners, between two by Hankinson's formula for others.
     *
     * @param gravity specific gravity, 0.31 to 0.73 as tabled
     * @param nominal diameter, up to 1 in
     * @param degrees from 0 along the grain to 90 across
     */
    public static Answer<Stress> atAngle(double gravity, Diameter nominal, double degrees) {
        if (!(gravity >= LEAST_GRAVITY - 1e-9 && gravity <= MOST_GRAVITY + 1e-9)) {
            return Answer.unknown("dowel bearing is tabled for a specific gravity of 0.31 to 0.73, not " + gravity);
        }
        if (!(degrees >= 0 && degrees <= 90)) {
            return Answer.unknown("a load meets the grain at 0 to 90°, not at " + degrees + "°");
        }
        if (nominal.inches() > 1 + 1e-9) {
            return Answer.unknown("dowel bearing is tabled up to 1 in thick, not for " + nominal.inches() + " in");
        }
        if (!nominal.isLarge()) {
            return Answer.known(Stress.psi(rounded(thin(gravity))));
        }
        double along = rounded(along(gravity));
        double across = rounded(across(gravity, nominal));
        return Answer.known(Stress.psi(hankinson(along, across, degrees)));
    }

    /** {@code Fe = 16600 G^1.84}, below 1/4 in, psi. */
    static double thin(double gravity) {
        return 16_600 * Math.pow(gravity, 1.84);
    }

    /** {@code Fe = 11200 G}, psi. */
    static double along(double gravity) {
        return 11_200 * gravity;
    }

    /** {@code Fe = 6100 G^1.45 / √D}, psi. */
    static double across(double gravity, Diameter nominal) {
        return 6100 * Math.pow(gravity, 1.45) / Math.sqrt(nominal.inches());
    }

    /** {@code Feθ = Fe∥ Fe⊥ / (Fe∥ sin²θ + Fe⊥ cos²θ)}. */
    static double hankinson(double along, double across, double degrees) {
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        return along * across / (along * sin * sin + across * cos * cos);
    }

    /** Halves go up; never below zero here. */
    private static double rounded(double psi) {
        return Math.floor(psi / ROUNDED_TO + 0.5) * ROUNDED_TO;
    }
}
