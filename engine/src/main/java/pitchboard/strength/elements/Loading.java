package pitchboard.strength.elements;

import java.util.List;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Polygon;
import pitchboard.strength.elements.mesh.Xy;

/** Edge loads as forces on nodes that do the same work. */
final class Loading {
    /** Where along a side its load is looked at, and what it weighs: three points, exact to the fifth power. */
    private static final double[][] GAUSS = {
        {0.5 - Math.sqrt(0.15), 5.0 / 18}, {0.5, 8.0 / 18}, {0.5 + Math.sqrt(0.15), 5.0 / 18}
    };

    private Loading() {}

    /** Level and plumb force, in N, of node after node. Every load lies along whole sides of triangles. */
    static double[] forces(Mesh mesh, List<EdgeLoad> loads) {
        double[] forces = new double[2 * mesh.nodes()];
        for (int[] side : mesh.rim()) {
            for (EdgeLoad load : loads) {
                if (Polygon.isOn(at(mesh, side[2]), load.from(), load.to())) {
                    addSide(mesh, side, load, forces);
                }
            }
        }
        return forces;
    }

    private static void addSide(Mesh mesh, int[] side, EdgeLoad load, double[] forces) {
        Xy start = at(mesh, side[0]);
        Xy end = at(mesh, side[1]);
        double length = start.distanceTo(end);
        for (double[] point : GAUSS) {
            double share = load.from().distanceTo(start.toward(end, point[0]))
                    / load.from().distanceTo(load.to());
            double weight = point[1] * length;
            double x = weight * (load.startX() + share * (load.endX() - load.startX()));
            double y = weight * (load.startY() + share * (load.endY() - load.startY()));
            double s = point[0];
            double[] shape = {(1 - s) * (1 - 2 * s), s * (2 * s - 1), 4 * s * (1 - s)};
            for (int i = 0; i < side.length; i++) {
                forces[2 * side[i]] += shape[i] * x;
                forces[2 * side[i] + 1] += shape[i] * y;
            }
        }
    }

    private static Xy at(Mesh mesh, int node) {
        return new Xy(mesh.x()[node], mesh.y()[node]);
    }
}
