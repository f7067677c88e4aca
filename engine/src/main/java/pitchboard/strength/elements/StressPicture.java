package pitchboard.strength.elements;

import pitchboard.strength.elements.mesh.Mesh;

/** One mesh with its stresses, to be drawn. The arrays are handed out as they are and must not be written to. */
public final class StressPicture {
    private final Mesh mesh;
    private final double[] movement;
    private final double[] stresses;

    StressPicture(Mesh mesh, double[] movement, double[] stresses) {
        this.mesh = mesh;
        this.movement = movement;
        this.stresses = stresses;
    }

    public Mesh mesh() {
        return mesh;
    }

    /** Level and plumb movement, in mm, of node after node. */
    public double[] movement() {
        return movement;
    }

    /** Stress along the grain, across it, and shear, in N/mm², of node after node. */
    public double[] stresses() {
        return stresses;
    }

    /** Stress along the grain in one node, N/mm²; below zero for compression. */
    public double along(int node) {
        return stresses[3 * node];
    }
}
