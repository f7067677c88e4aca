package pitchboard.strength.elements;

import pitchboard.strength.elements.mesh.Fineness;

/**
 * How carefully to reckon.
 *
 * @param coarsest the first mesh; each further one cuts every triangle of the one before into four
 * @param meshes how many meshes, from 1 to 4; it takes three to see where they lead
 * @param awayMm stresses are told only for places at least so far from sharp inward corners and from the ends of
 *     supports and loads, where no mesh would find a limit
 */
public record Effort(Fineness coarsest, int meshes, double awayMm) {
    private static final double LARGEST_SHARE = 0.4;
    private static final double CORNER_SHARE = 1.0 / 600;
    private static final double INCH_MM = 25.4;

    public Effort {
        if (meshes < 1 || meshes > 4) {
            throw new IllegalArgumentException("from 1 to 4 meshes, got " + meshes);
        }
        if (!(awayMm >= 0)) {
            throw new IllegalArgumentException("a distance from corners of 0 mm or more, got " + awayMm);
        }
    }

    /** For papers: a deflection within half a percent from three meshes, the finest of about 25,000 unknowns. */
    public static Effort usual(double depthMm) {
        return new Effort(new Fineness(LARGEST_SHARE * depthMm, depthMm / 80, 1), 3, INCH_MM);
    }

    /** For an answer within half a percent: three meshes, about 2,000, 8,000 and 32,000 unknowns for ten steps. */
    public static Effort thorough(double depthMm) {
        return new Effort(coarsest(depthMm), 3, INCH_MM);
    }

    /** For an answer within about two percent, at a tenth of the time. */
    public static Effort quick(double depthMm) {
        return new Effort(coarsest(depthMm), 2, INCH_MM);
    }

    private static Fineness coarsest(double depthMm) {
        return new Fineness(LARGEST_SHARE * depthMm, CORNER_SHARE * depthMm, 1);
    }
}
