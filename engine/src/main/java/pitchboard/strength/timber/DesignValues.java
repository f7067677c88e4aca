package pitchboard.strength.timber;

import pitchboard.source.Clause;
import pitchboard.strength.Stress;

/**
 * What is published for one species and grade.
 *
 * @param bending {@code Fb}
 * @param tension {@code Ft}, along the grain
 * @param shear {@code Fv}, along the grain
 * @param bearing {@code Fc,perp}, across the grain
 * @param compression {@code Fc}, along the grain
 * @param modulus {@code E}, for deflection
 * @param minimumModulus {@code Emin}, for buckling
 * @param specificGravity {@code G}, for fasteners
 * @param sizeInside whether the values already are those of one width, so that no size factor follows
 */
public record DesignValues(
        String species,
        String grade,
        Stress bending,
        Stress tension,
        Stress shear,
        Stress bearing,
        Stress compression,
        Stress modulus,
        Stress minimumModulus,
        double specificGravity,
        boolean sizeInside,
        Clause source) {
    /** Such as {@code Hem-Fir No.2}. */
    public String name() {
        return species + " " + grade;
    }

    boolean isStud() {
        return grade.equals("Stud");
    }
}
