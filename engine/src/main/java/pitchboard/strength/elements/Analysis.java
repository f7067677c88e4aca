package pitchboard.strength.elements;

import java.util.List;
import java.util.Optional;
import pitchboard.strength.elements.algebra.SparseMatrix;
import pitchboard.strength.elements.mesh.Mesh;

/** One mesh, held: its stiffness put together and factored, ready for any load. */
final class Analysis {
    private static final int MOVEMENTS = 2 * Element.NODES;

    private final Mesh mesh;
    private final Grain grain;
    private final double thicknessMm;
    private final Holding holding;
    private final SparseMatrix matrix;

    private Analysis(Mesh mesh, Grain grain, double thicknessMm, List<Support> supports) {
        this.mesh = mesh;
        this.grain = grain;
        this.thicknessMm = thicknessMm;
        this.holding = new Holding(mesh, supports);
        this.matrix = holding.matrix;
    }

    /** Nothing when the supports let the wood move as a whole. */
    static Optional<Analysis> of(Mesh mesh, Grain grain, double thicknessMm, List<Support> supports) {
        Analysis analysis = new Analysis(mesh, grain, thicknessMm, supports);
        analysis.assemble();
        return analysis.matrix.factor() < 0 ? Optional.of(analysis) : Optional.empty();
    }

    int unknowns() {
        return matrix.size();
    }

    int kept() {
        return matrix.kept();
    }

    /** @param forces level and plumb force, in N, of node after node */
    Field solve(double[] forces) {
        double[] q = matrix.solve(holding.gathered(forces));
        return new Field(mesh, grain, thicknessMm, holding, holding.movements(q), forces);
    }

    private void assemble() {
        Element element = new Element(mesh);
        double[] d = grain.stiffness();
        double[] k = new double[MOVEMENTS * MOVEMENTS];
        Tied tied = new Tied(holding);
        int[] movement = new int[MOVEMENTS];
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            element.stiffness(triangle, d, thicknessMm, k);
            for (int i = 0; i < MOVEMENTS; i++) {
                movement[i] = 2 * mesh.node(triangle, i / 2) + i % 2;
            }
            tied.add(movement, k, matrix);
        }
    }
}
