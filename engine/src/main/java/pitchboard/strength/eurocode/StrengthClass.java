package pitchboard.strength.eurocode;

import pitchboard.source.Clause;
import pitchboard.strength.Elastic;
import pitchboard.strength.Stress;

/**
 * The characteristic values of one strength class.
 *
 * @param bending {@code fm,k}
 * @param tension {@code ft,0,k}
 * @param compression {@code fc,0,k}
 * @param bearing {@code fc,90,k}
 * @param shear {@code fv,k}
 * @param modulus {@code E0,mean}
 * @param lowModulus {@code E0,05}
 * @param across {@code E90,mean}
 * @param slide {@code G,mean}
 * @param density {@code rho,k}, in kg/m³
 * @param cracksInside whether the shear value already allows for cracks, as in the older edition
 */
public record StrengthClass(
        String name,
        Stress bending,
        Stress tension,
        Stress compression,
        Stress bearing,
        Stress shear,
        Stress modulus,
        Stress lowModulus,
        Stress across,
        Stress slide,
        double density,
        boolean cracksInside,
        Clause source) {
    /** No class gives a Poisson's ratio; that of most softwoods, from memory, which hardly changes anything. */
    private static final double POISSON = 0.42;

    /** In the plane of the wide face; the class does not tell which way the rings run. */
    public Elastic elastic() {
        return new Elastic(modulus, across, slide, POISSON, "strength class " + name, source);
    }
}
