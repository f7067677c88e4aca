package pitchboard.strength.timber;

import pitchboard.measure.Decimals;
import pitchboard.source.Clause;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;

/**
 * The beam stability factor.
 *
 * <pre>{@code
 *   CL = (1 + F) / 1.9 − √(((1 + F) / 1.9)² − F / 0.95)
 *   F = FbE / Fb*     FbE = 1.20 Emin′ / RB²     RB = √(le·d / b²)
 * }</pre>
 *
 * Holds for RB of 50 or less.
 *
 * @param bending {@code Fb*}, without CL and Cfu
 * @param stiffness {@code Emin′}
 */
record Stability(Stress bending, Stress stiffness, Section section) {
    private static final Clause CLAUSE = Nds.SPECIFICATION.read("3.3.3");
    private static final String NAME = "stability";
    private static final double SLENDEREST = 50;

    Answer<Factor> factor(Bracing bracing) {
        if (section.depth().isAtMost(section.breadth())) {
            return Answer.known(Factor.idle("CL", NAME, "it is no deeper than wide, so it cannot tip", CLAUSE));
        }
        if (bracing instanceof Bracing.Held held) {
            return Answer.known(Factor.idle("CL", NAME, held.because(), CLAUSE));
        }
        return slender((Bracing.AtPoints) bracing);
    }

    private Answer<Factor> slender(Bracing.AtPoints points) {
        double slenderness = slenderness(points);
        if (slenderness > SLENDEREST) {
            return Answer.unknown("a beam this slender may not be used: RB is " + Decimals.fixed(slenderness, 1)
                    + ", and 50 at most; hold its edge at closer points");
        }
        double share = critical(slenderness) / bending.nPerMm2();
        double half = (1 + share) / 1.9;
        double factor = half - Math.sqrt(half * half - share / 0.95);
        return Answer.known(new Factor(
                "CL",
                NAME,
                factor,
                "its edge is held only every " + Decimals.trimmed(points.apart().approxMm() / 25.4, 1) + " in: RB is "
                        + Decimals.fixed(slenderness, 1),
                CLAUSE));
    }

    /** {@code FbE} in N/mm². */
    private double critical(double slenderness) {
        return 1.20 * stiffness.nPerMm2() / (slenderness * slenderness);
    }

    double slenderness(Bracing.AtPoints points) {
        double depth = section.depthMm();
        return Math.sqrt(effectiveMm(points) * depth / (section.breadthMm() * section.breadthMm()));
    }

    /** {@code le} for a simple span (NDS 2018 Table 3.3.3). */
    double effectiveMm(Bracing.AtPoints points) {
        double unheld = points.apart().approxMm();
        double depth = section.depthMm();
        boolean near = unheld / depth < 7;
        if (points.load() == Bracing.Load.MIDDLE) {
            return near ? 1.80 * unheld : 1.37 * unheld + 3 * depth;
        }
        return near ? 2.06 * unheld : 1.63 * unheld + 3 * depth;
    }
}
