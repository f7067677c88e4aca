package pitchboard.strength.timber;

import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.source.Clause;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Stress;

/**
 * Pressure along the grain of what can buckle, alone and together with bending.
 *
 * <pre>{@code
 *   CP = (1 + a) / 2c − √(((1 + a) / 2c)² − a / c)
 *   a = FcE / Fc*     FcE = 0.822 Emin′ / (le / d)²     c = 0.8 for sawn lumber
 * }</pre>
 *
 * Holds for le/d of 50 or less.
 */
public final class Columns {
    private static final Clause CLAUSE = Nds.SPECIFICATION.memory("3.7.1");
    private static final double SAWN = 0.8;
    private static final double SLENDEREST = 50;

    private Columns() {}

    /** {@code Fc′ = Fc*·CP}. */
    public static Answer<Resistance> compression(Adjusting board, Length unheld, Length depth) {
        double slenderness = unheld.approxMm() / depth.approxMm();
        if (slenderness > SLENDEREST) {
            return Answer.unknown("a post this slender may not be used: its free length is "
                    + Decimals.fixed(slenderness, 1) + " times its depth, and may be 50 times");
        }
        return board.compression().map(star -> {
            Resistance buckling = star.with(factor(star.value(), critical(board, unheld, depth), slenderness));
            return new Resistance(
                    buckling.symbol(),
                    "Fc′",
                    "pressure along the grain it may bear, without buckling",
                    buckling.published(),
                    buckling.factors(),
                    buckling.source());
        });
    }

    /** {@code FcE}. */
    public static Stress critical(Adjusting board, Length unheld, Length depth) {
        double slenderness = unheld.approxMm() / depth.approxMm();
        return board.minimumModulus().value().times(0.822 / (slenderness * slenderness));
    }

    private static Factor factor(Stress star, Stress critical, double slenderness) {
        double share = critical.over(star);
        double half = (1 + share) / (2 * SAWN);
        double factor = half - Math.sqrt(half * half - share / SAWN);
        return new Factor(
                "CP",
                "column stability",
                factor,
                "its free length is " + Decimals.fixed(slenderness, 1) + " times its depth",
                CLAUSE);
    }

    /**
     * Bending on edge together with pressure along the grain: {@code (fc / Fc′)² + fb / (Fb′·(1 − fc / FcE))}, at most 1
     * (NDS 2018 3.9.2). Nothing is known once the pressure alone makes it buckle.
     */
    public static Answer<Double> together(
            Stress pressure, Stress compression, Stress bend, Stress bending, Stress critical) {
        double left = 1 - pressure.over(critical);
        if (left <= 0) {
            return Answer.unknown("the pressure along it alone makes it buckle");
        }
        double alone = pressure.over(compression);
        return Answer.known(alone * alone + bend.over(bending) / left);
    }

    /** Bending together with a pull along the grain: {@code ft / Ft′ + fb / Fb*}, at most 1 (NDS 2018 3.9.1). */
    public static double pulled(Stress pull, Stress tension, Stress bend, Stress bending) {
        return pull.over(tension) + bend.over(bending);
    }
}
