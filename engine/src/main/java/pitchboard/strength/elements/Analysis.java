package pitchboard.strength.elements;

import java.util.List;
import java.util.Optional;
import pitchboard.strength.elements.algebra.Skyline;
import pitchboard.strength.elements.mesh.Mesh;

/** One mesh, held: its stiffness put together and factored, ready for any load. */
final class Analysis {
    private final Mesh mesh;
    private final Grain grain;
    private final double thicknessMm;
    private final Holding holding;
    private final Skyline matrix;

    private Analysis(Mesh mesh, Grain grain, double thicknessMm, List<Support> supports) {
        this.mesh = mesh;
        this.grain = grain;
        this.thicknessMm = thicknessMm;
        this.holding = new Holding(mesh, supports);
        this.matrix = new Skyline(firstColumns());
    }

    /** Nothing when the supports let the wood move as a whole. */
    static Optional<Analysis> of(Mesh mesh, Grain grain, double thicknessMm, List<Support> supports) {
        Analysis analysis = new Analysis(mesh, grain, thicknessMm, supports);
        analysis.assemble();
        return analysis.matrix.factor() < 0 ? Optional.of(analysis) : Optional.empty();
    }

    int unknowns() {
        return holding.unknowns;
    }

    int kept() {
        return matrix.kept();
    }

    /** @param forces level and plumb force, in N, of node after node */
    Field solve(double[] forces) {
        double[] q = matrix.solve(holding.gathered(forces));
        return new Field(mesh, grain, thicknessMm, holding, holding.movements(q), forces);
    }

    private int[] firstColumns() {
        int[] first = new int[holding.unknowns];
        for (int row = 0; row < first.length; row++) {
            first[row] = row;
        }
        int[] met = new int[4 * Element.NODES];
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            int count = unknownsOf(triangle, met);
            int least = Integer.MAX_VALUE;
            for (int k = 0; k < count; k++) {
                least = Math.min(least, met[k]);
            }
            for (int k = 0; k < count; k++) {
                first[met[k]] = Math.min(first[met[k]], least);
            }
        }
        return first;
    }

    private int unknownsOf(int triangle, int[] met) {
        int count = 0;
        for (int i = 0; i < 2 * Element.NODES; i++) {
            int movement = 2 * mesh.node(triangle, i / 2) + i % 2;
            if (holding.main[movement] != Holding.NONE) {
                met[count++] = holding.main[movement];
            }
            if (holding.turn[movement] != Holding.NONE) {
                met[count++] = holding.turn[movement];
            }
        }
        return count;
    }

    private void assemble() {
        Element element = new Element(mesh);
        double[] d = grain.stiffness();
        double[] k = new double[4 * Element.NODES * Element.NODES];
        int[] movement = new int[2 * Element.NODES];
        for (int triangle = 0; triangle < mesh.triangles(); triangle++) {
            element.stiffness(triangle, d, thicknessMm, k);
            for (int i = 0; i < movement.length; i++) {
                movement[i] = 2 * mesh.node(triangle, i / 2) + i % 2;
            }
            for (int i = 0; i < movement.length; i++) {
                for (int j = 0; j < movement.length; j++) {
                    addPair(movement[i], movement[j], k[movement.length * i + j]);
                }
            }
        }
    }

    private void addPair(int a, int b, double value) {
        int mainA = holding.main[a];
        int mainB = holding.main[b];
        int turnA = holding.turn[a];
        int turnB = holding.turn[b];
        addLower(mainA, mainB, value);
        if (turnA != Holding.NONE) {
            addLower(turnA, mainB, holding.arm[a] * value);
        }
        if (turnB != Holding.NONE) {
            addLower(mainA, turnB, holding.arm[b] * value);
            if (turnA != Holding.NONE) {
                addLower(turnA, turnB, holding.arm[a] * holding.arm[b] * value);
            }
        }
    }

    private void addLower(int row, int column, double value) {
        if (column != Holding.NONE && row >= column) {
            matrix.add(row, column, value);
        }
    }
}
