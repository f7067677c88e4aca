package pitchboard.strength.elements;

import pitchboard.strength.elements.algebra.SparseMatrix;

/** The stiffness of a triangle between its movements, told between the unknowns that they follow from. */
final class Tied {
    private final Holding holding;
    private final int[] unknown = new int[4 * Element.NODES];
    private final int[] from = new int[4 * Element.NODES];
    private final double[] factor = new double[4 * Element.NODES];
    private final double[] square = new double[16 * Element.NODES * Element.NODES];
    private int count;

    Tied(Holding holding) {
        this.holding = holding;
    }

    /** @param k rows of as many numbers as there are movements */
    void add(int[] movement, double[] k, SparseMatrix matrix) {
        count = 0;
        for (int i = 0; i < movement.length; i++) {
            note(i, holding.main[movement[i]], 1);
            note(i, holding.turn[movement[i]], holding.arm[movement[i]]);
        }
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                square[count * i + j] = factor[i] * factor[j] * k[movement.length * from[i] + from[j]];
            }
        }
        matrix.add(unknown, count, square);
    }

    private void note(int place, int what, double by) {
        if (what != Holding.NONE) {
            unknown[count] = what;
            from[count] = place;
            factor[count++] = by;
        }
    }
}
