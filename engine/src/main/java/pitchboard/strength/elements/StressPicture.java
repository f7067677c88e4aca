package pitchboard.strength.elements;

import java.util.Arrays;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Xy;

/** One mesh with its stresses, to be drawn. The arrays are handed out as they are and must not be written to. */
public final class StressPicture {
    private final Mesh mesh;
    private final Grain grain;
    private final double[] movement;
    private final double[] stresses;

    StressPicture(Mesh mesh, Grain grain, double[] movement, double[] stresses) {
        this.mesh = mesh;
        this.grain = grain;
        this.movement = movement;
        this.stresses = stresses;
    }

    public Mesh mesh() {
        return mesh;
    }

    /** Stress along the grain, across it, and shear, in N/mm², of node after node. */
    public double[] stresses() {
        return stresses;
    }

    /** Stress along the grain in one node, N/mm²; below zero for compression. */
    public double along(int node) {
        return stresses[3 * node];
    }

    /** Where a node comes to lie, its movement drawn so many times larger. */
    public Xy moved(int node, double times) {
        return new Xy(mesh.x()[node] + times * movement[2 * node], mesh.y()[node] + times * movement[2 * node + 1]);
    }

    /**
     * The rim, from node to node around the wood, the first not repeated. The longest of them, should there be several.
     */
    public int[] rim() {
        int[] next = new int[mesh.nodes()];
        Arrays.fill(next, -1);
        for (int[] side : mesh.rim()) {
            next[side[0]] = side[2];
            next[side[2]] = side[1];
        }
        int[] longest = {};
        for (int start = 0; start < next.length; start++) {
            int[] rim = new int[next.length];
            int count = 0;
            for (int node = start; node >= 0 && next[node] >= 0; ) {
                rim[count++] = node;
                int following = next[node];
                next[node] = -1;
                node = following;
            }
            longest = count > longest.length ? Arrays.copyOf(rim, count) : longest;
        }
        return longest;
    }

    /** Stress along the grain at places in rows along the grain and columns across it, so far apart. */
    public StressGrid grid(double apartMm) {
        return StressGrid.of(this, grain, apartMm);
    }
}
