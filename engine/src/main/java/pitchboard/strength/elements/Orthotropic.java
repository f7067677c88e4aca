package pitchboard.strength.elements;

import java.util.ArrayList;
import java.util.List;

/**
 * How stiff wood is in one plane, along and across the grain.
 *
 * @param alongMpa modulus of elasticity along the grain, N/mm²
 * @param acrossMpa modulus of elasticity across the grain, N/mm²
 * @param shearMpa shear modulus of the plane, N/mm²
 * @param poisson how much it narrows across for a stretch along: ν of the pair along, across
 */
public record Orthotropic(double alongMpa, double acrossMpa, double shearMpa, double poisson) {
    /** The same stiffness in every direction. */
    public static Orthotropic isotropic(double modulusMpa, double poisson) {
        return new Orthotropic(modulusMpa, modulusMpa, modulusMpa / (2 * (1 + poisson)), poisson);
    }

    /** Every reason why no wood can be like this; empty when there is none. */
    public List<String> troubles() {
        List<String> troubles = new ArrayList<>();
        if (!(alongMpa > 0 && acrossMpa > 0 && shearMpa > 0 && alongMpa < 1e9 && acrossMpa < 1e9 && shearMpa < 1e9)) {
            troubles.add(
                    "moduli must be above zero, got " + alongMpa + ", " + acrossMpa + " and " + shearMpa + " N/mm²");
        } else if (!(poisson * poisson * acrossMpa / alongMpa < 1)) {
            troubles.add("Poisson's ratio " + poisson + " would make the wood give out work when it is loaded");
        }
        return troubles;
    }

    /**
     * The stiffness matrix of plane stress in axes that the grain crosses at an angle: stress (xx, yy, xy) from strain
     * (xx, yy, doubled xy), as its six different numbers 11, 12, 13, 22, 23, 33.
     *
     * @param cos of the angle from the x axis to the grain, counterclockwise
     * @param sin of the same
     */
    double[] turned(double cos, double sin) {
        double whole = 1 - poisson * poisson * acrossMpa / alongMpa;
        double q11 = alongMpa / whole;
        double q22 = acrossMpa / whole;
        double q12 = poisson * acrossMpa / whole;
        double q66 = shearMpa;
        double c2 = cos * cos;
        double s2 = sin * sin;
        double cs = cos * sin;
        double mixed = q12 + 2 * q66;
        return new double[] {
            q11 * c2 * c2 + 2 * mixed * c2 * s2 + q22 * s2 * s2,
            (q11 + q22 - 4 * q66) * c2 * s2 + q12 * (c2 * c2 + s2 * s2),
            cs * ((q11 - mixed) * c2 - (q22 - mixed) * s2),
            q11 * s2 * s2 + 2 * mixed * c2 * s2 + q22 * c2 * c2,
            cs * ((q11 - mixed) * s2 - (q22 - mixed) * c2),
            (q11 + q22 - 2 * q12) * c2 * s2 + q66 * (c2 - s2) * (c2 - s2)
        };
    }
}
