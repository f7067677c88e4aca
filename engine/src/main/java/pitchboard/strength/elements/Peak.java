package pitchboard.strength.elements;

import pitchboard.strength.elements.mesh.Xy;

/**
 * The largest stress of one kind, away from sharp corners.
 *
 * @param mpa N/mm², above zero; for compression too
 * @param where on the finest mesh
 */
public record Peak(Kind kind, Limit mpa, Xy where) {
    /** Which stress, in axes of the grain. */
    public enum Kind {
        TENSION_ALONG(0, 1),
        COMPRESSION_ALONG(0, -1),
        TENSION_ACROSS(1, 1),
        COMPRESSION_ACROSS(1, -1),
        SHEAR(2, 0);

        private final int component;
        private final int sign;

        Kind(int component, int sign) {
            this.component = component;
            this.sign = sign;
        }

        /** The stress of this kind in a node, from the three numbers of every node. */
        double of(double[] stresses, int node) {
            double stress = stresses[3 * node + component];
            return sign == 0 ? Math.abs(stress) : sign * stress;
        }
    }
}
