package pitchboard.strength.elements;

import pitchboard.strength.elements.mesh.Mesh;

/** How one mesh moved under one load, and what stands in it. */
final class Field {
    /** From the three points inside to a corner: the plane through their values. */
    private static final double NEAR = 5.0 / 3;

    private static final double FAR = -1.0 / 3;

    final Mesh mesh;
    final Holding holding;
    /** Level and plumb movement, in mm, of node after node. */
    final double[] movement;

    private final Grain grain;
    private final double[] d;
    private final double thicknessMm;
    private final double[] forces;

    Field(Mesh mesh, Grain grain, double thicknessMm, Holding holding, double[] movement, double[] forces) {
        this.mesh = mesh;
        this.grain = grain;
        this.d = grain.stiffness();
        this.thicknessMm = thicknessMm;
        this.holding = holding;
        this.movement = movement;
        this.forces = forces;
    }

    /**
     * Stress along the grain, across it, and shear, in N/mm², three numbers for node after node: the plane through the
     * values at the three points of each triangle, averaged over the triangles that meet in the node.
     */
    double[] stresses() {
        double[] sum = new double[3 * mesh.nodes()];
        int[] count = new int[mesh.nodes()];
        Element element = new Element(mesh);
        double[][] inside = new double[3][3];
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            for (int point = 0; point < 3; point++) {
                stressAt(element, triangle, Element.POINTS[point], inside[point]);
            }
            for (int i = 0; i < Element.NODES; i++) {
                int node = mesh.node(triangle, i);
                count[node]++;
                for (int c = 0; c < 3; c++) {
                    sum[3 * node + c] += atNode(i, inside[0][c], inside[1][c], inside[2][c]);
                }
            }
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] /= count[i / 3];
        }
        return sum;
    }

    private static double atNode(int place, double a, double b, double c) {
        double rest = a + b + c;
        double atA = NEAR * a + FAR * (rest - a);
        double atB = NEAR * b + FAR * (rest - b);
        double atC = NEAR * c + FAR * (rest - c);
        double[] corners = {atA, atB, atC};
        return place < 3 ? corners[place] : (corners[place - 3] + corners[(place - 2) % 3]) / 2;
    }

    /** Stress in axes of the grain at one place of a triangle, for what has these movements. */
    private void stressAt(Element element, int triangle, double[] point, double[] stress) {
        element.derive(triangle, point[0], point[1]);
        stressFromStrain(element, triangle, stress);
        grain.turn(stress);
    }

    private void stressFromStrain(Element element, int triangle, double[] stress) {
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int i = 0; i < Element.NODES; i++) {
            int node = mesh.node(triangle, i);
            double u = movement[2 * node];
            double v = movement[2 * node + 1];
            xx += element.dx[i] * u;
            yy += element.dy[i] * v;
            xy += element.dy[i] * u + element.dx[i] * v;
        }
        stress[0] = d[0] * xx + d[1] * yy + d[2] * xy;
        stress[1] = d[1] * xx + d[3] * yy + d[4] * xy;
        stress[2] = d[2] * xx + d[4] * yy + d[5] * xy;
    }

    /**
     * What the nodes need to stay where they are, less what is put on them, in N: nothing on free nodes, and on held ones
     * what the support gives.
     */
    double[] reactions() {
        double[] rest = new double[movement.length];
        Element element = new Element(mesh);
        double[] k = new double[4 * Element.NODES * Element.NODES];
        int size = 2 * Element.NODES;
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            element.stiffness(triangle, d, thicknessMm, k);
            for (int i = 0; i < size; i++) {
                double sum = 0;
                for (int j = 0; j < size; j++) {
                    sum += k[size * i + j] * movement[2 * mesh.node(triangle, j / 2) + j % 2];
                }
                rest[2 * mesh.node(triangle, i / 2) + i % 2] += sum;
            }
        }
        for (int i = 0; i < rest.length; i++) {
            rest[i] -= forces[i];
        }
        return rest;
    }
}
