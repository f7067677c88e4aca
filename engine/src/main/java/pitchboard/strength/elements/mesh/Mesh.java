package pitchboard.strength.elements.mesh;

/**
 * Triangles with six nodes: three corners, counterclockwise, then the middles of the sides from the first corner to the
 * second, the second to the third, and the third to the first. Triangles that touch share their nodes.
 *
 * <p>The arrays are taken and handed out as they are, for they are large; nobody may write to them.
 */
public final class Mesh {
    public static final int NODES_OF_ELEMENT = 6;

    private final double[] x;
    private final double[] y;
    private final int[] elements;

    /**
     * A mesh of what is given.
     *
     * @param x of each node, in mm
     * @param y of each node, in mm
     * @param elements six node numbers for each triangle, one triangle after the other
     */
    public Mesh(double[] x, double[] y, int[] elements) {
        if (x.length != y.length || elements.length % NODES_OF_ELEMENT != 0) {
            throw new IllegalArgumentException("a mesh has as many x as y, and six nodes for each triangle");
        }
        this.x = x;
        this.y = y;
        this.elements = elements;
    }

    /** Of each node, in mm. */
    public double[] x() {
        return x;
    }

    /** Of each node, in mm. */
    public double[] y() {
        return y;
    }

    /** Six node numbers for each triangle, one triangle after the other. */
    public int[] elements() {
        return elements;
    }

    /** The mesh with straight sides over these triangles, each given by three corners, counterclockwise. */
    static Mesh straight(double[] cornerX, double[] cornerY, int[] triangles) {
        return new MiddleNodes(cornerX, cornerY, triangles).mesh();
    }

    public int nodes() {
        return x.length;
    }

    public int triangles() {
        return elements.length / NODES_OF_ELEMENT;
    }

    public int node(int triangle, int place) {
        return elements[NODES_OF_ELEMENT * triangle + place];
    }

    /** Every triangle cut into four by joining the middles of its sides; sides become straight. */
    public Mesh refined() {
        int[] quarters = {0, 3, 5, 3, 1, 4, 5, 4, 2, 3, 4, 5};
        int[] finer = new int[triangles() * quarters.length];
        int count = 0;
        for (int triangle = 0; triangle < triangles(); triangle++) {
            for (int place : quarters) {
                finer[count++] = node(triangle, place);
            }
        }
        return straight(x, y, finer);
    }

    /** The sides that belong to one triangle only: start, end and middle node of each, the wood on its left. */
    public int[][] rim() {
        return Rim.of(this);
    }
}
