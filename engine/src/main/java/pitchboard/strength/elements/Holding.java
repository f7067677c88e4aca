package pitchboard.strength.elements;

import java.util.Arrays;
import java.util.List;
import pitchboard.strength.elements.algebra.Dissection;
import pitchboard.strength.elements.algebra.SparseMatrix;
import pitchboard.strength.elements.mesh.Mesh;
import pitchboard.strength.elements.mesh.Polygon;
import pitchboard.strength.elements.mesh.Xy;

/**
 * How the movement of every node follows from the unknowns: movement {@code 2·node} is level, {@code 2·node + 1} plumb,
 * and each is {@code q[main] + arm · q[turn]}, where a missing unknown counts as zero.
 */
final class Holding {
    static final int NONE = -1;

    final int[] main;
    final int[] turn;
    final double[] arm;
    /** For each node the support that holds it, or {@link #NONE}. */
    final int[] supportOf;

    /** Over the unknowns. */
    final SparseMatrix matrix;
    /** Which movements nothing lets happen, for nodes that are held by themselves. */
    private final boolean[] still;

    private final Mesh mesh;
    private final List<Support> supports;
    /** The vertex of the graph each node belongs to: itself, or the rigid face it lies on. */
    private final int[] vertexOf;

    Holding(Mesh mesh, List<Support> supports) {
        this.mesh = mesh;
        this.supports = supports;
        this.supportOf = new int[mesh.nodes()];
        this.vertexOf = new int[mesh.nodes()];
        this.main = new int[2 * mesh.nodes()];
        this.turn = new int[2 * mesh.nodes()];
        this.arm = new double[2 * mesh.nodes()];
        this.still = new boolean[2 * mesh.nodes()];
        findSupports();
        this.matrix = outline();
        for (int node = 0; node < mesh.nodes(); node++) {
            tie(node, matrix.firstUnknowns()[vertexOf[node]]);
        }
    }

    private void findSupports() {
        Arrays.fill(supportOf, NONE);
        for (int node = 0; node < mesh.nodes(); node++) {
            vertexOf[node] = node;
        }
        for (int[] side : mesh.rim()) {
            for (int s = 0; s < supports.size(); s++) {
                if (isOn(supports.get(s), side[2])) {
                    hold(side, s);
                }
            }
        }
    }

    private boolean isOn(Support support, int node) {
        return Polygon.isOn(new Xy(mesh.x()[node], mesh.y()[node]), support.from(), support.to());
    }

    private void hold(int[] side, int index) {
        Support support = supports.get(index);
        for (int node : side) {
            supportOf[node] = index;
            if (support.face() == Support.Face.RIGID) {
                vertexOf[node] = mesh.nodes() + index;
            } else {
                still[2 * node] |= support.held().level();
                still[2 * node + 1] |= support.held().plumb();
            }
        }
    }

    /** An empty matrix over the unknowns, cut so that few numbers fill up. */
    private SparseMatrix outline() {
        int[][] groups = new int[mesh.triangles()][Mesh.NODES_OF_ELEMENT];
        double[] x = new double[groups.length];
        double[] y = new double[groups.length];
        for (int triangle = 0; triangle < groups.length; triangle++) {
            for (int i = 0; i < Mesh.NODES_OF_ELEMENT; i++) {
                int node = mesh.node(triangle, i);
                groups[triangle][i] = vertexOf[node];
                x[triangle] += mesh.x()[node] / Mesh.NODES_OF_ELEMENT;
                y[triangle] += mesh.y()[node] / Mesh.NODES_OF_ELEMENT;
            }
        }
        int[] freedoms = new int[mesh.nodes() + supports.size()];
        for (int vertex = 0; vertex < freedoms.length; vertex++) {
            freedoms[vertex] = freedoms(vertex);
        }
        return new SparseMatrix(Dissection.of(freedoms.length, groups, x, y), freedoms);
    }

    private int freedoms(int vertex) {
        if (vertex >= mesh.nodes()) {
            Support support = supports.get(vertex - mesh.nodes());
            return support.face() == Support.Face.RIGID ? translations(support.held()) + 1 : 0;
        }
        if (vertexOf[vertex] != vertex) {
            return 0;
        }
        return (still[2 * vertex] ? 0 : 1) + (still[2 * vertex + 1] ? 0 : 1);
    }

    private static int translations(Support.Held held) {
        return (held.level() ? 0 : 1) + (held.plumb() ? 0 : 1);
    }

    private void tie(int node, int first) {
        turn[2 * node] = NONE;
        turn[2 * node + 1] = NONE;
        if (vertexOf[node] == node) {
            main[2 * node] = still[2 * node] ? NONE : first;
            main[2 * node + 1] = still[2 * node + 1] ? NONE : first + (still[2 * node] ? 0 : 1);
        } else {
            tieToFace(node, first, supports.get(vertexOf[node] - mesh.nodes()));
        }
    }

    private void tieToFace(int node, int first, Support face) {
        main[2 * node] = face.held().level() ? NONE : first;
        main[2 * node + 1] = face.held().plumb() ? NONE : first + (face.held().level() ? 0 : 1);
        int last = first + translations(face.held());
        turn[2 * node] = last;
        turn[2 * node + 1] = last;
        arm[2 * node] = face.middle().y() - mesh.y()[node];
        arm[2 * node + 1] = mesh.x()[node] - face.middle().x();
    }

    /** The movement of every node from the unknowns. */
    double[] movements(double[] q) {
        double[] u = new double[main.length];
        for (int i = 0; i < u.length; i++) {
            u[i] = (main[i] == NONE ? 0 : q[main[i]]) + (turn[i] == NONE ? 0 : arm[i] * q[turn[i]]);
        }
        return u;
    }

    /** What forces on the nodes do to the unknowns. */
    double[] gathered(double[] forces) {
        double[] f = new double[matrix.size()];
        for (int i = 0; i < forces.length; i++) {
            if (main[i] != NONE) {
                f[main[i]] += forces[i];
            }
            if (turn[i] != NONE) {
                f[turn[i]] += arm[i] * forces[i];
            }
        }
        return f;
    }
}
