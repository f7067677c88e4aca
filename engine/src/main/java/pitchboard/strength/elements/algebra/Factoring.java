package pitchboard.strength.elements.algebra;

import java.util.Arrays;

/**
 * Factors block after block. Columns are worked on whole, four at a time: that reads memory straight on, and a machine that
 * can takes several numbers at once.
 */
final class Factoring {
    private final Fronts fronts;
    private final double[] values;
    private final double leastPivot;
    private final double[] before;
    /** What finished blocks hand up, the last on top; lower halves of columns. */
    private final double[] waiting;

    private int top;
    private final double[] update;
    private final double[] column;
    private final int[] place;
    private final int[] children;

    /** @param values the columns of every block, replaced by the factor */
    Factoring(Fronts fronts, double[] values, double leastPivot) {
        this.fronts = fronts;
        this.values = values;
        this.leastPivot = leastPivot;
        this.before = new double[fronts.blockOf.length];
        this.waiting = new double[fronts.waiting];
        this.column = new double[fronts.largest];
        this.place = new int[fronts.largest];
        this.children = new int[fronts.blocks()];
        int most = 0;
        for (int block = 0; block < fronts.blocks(); block++) {
            most = Math.max(most, fronts.handed(block));
            if (fronts.parent[block] >= 0) {
                children[fronts.parent[block]]++;
            }
        }
        this.update = new double[most];
    }

    /** The first unknown whose pivot vanishes, or -1. */
    int run() {
        for (int unknown = 0; unknown < before.length; unknown++) {
            int block = fronts.blockOf[unknown];
            int j = unknown - fronts.first[block];
            before[unknown] = values[fronts.at[block] + j * fronts.rows(block) + j];
        }
        int[] stack = new int[fronts.blocks()];
        int stacked = 0;
        for (int block = 0; block < fronts.blocks(); block++) {
            Arrays.fill(update, 0, fronts.handed(block), 0);
            for (int i = 0; i < children[block]; i++) {
                takeFrom(stack[--stacked], block);
            }
            int loose = factorColumns(block);
            if (loose >= 0) {
                return loose;
            }
            reduceUpdate(block);
            copy(update, 0, waiting, top, fronts.handed(block));
            top += fronts.handed(block);
            stack[stacked++] = block;
        }
        return -1;
    }

    /** Adds what a child hands up; it is the last that waits. */
    private void takeFrom(int child, int block) {
        int[] rows = fronts.beyond[child];
        int size = rows.length;
        top -= size * size;
        int own = fronts.own(block);
        int height = fronts.rows(block);
        int later = height - own;
        int found = 0;
        for (int i = 0; i < size; i++) {
            if (rows[i] < fronts.first[block + 1]) {
                place[i] = rows[i] - fronts.first[block];
            } else {
                while (fronts.beyond[block][found] != rows[i]) {
                    found++;
                }
                place[i] = own + found;
            }
        }
        for (int j = 0; j < size; j++) {
            int from = top + j * size;
            if (place[j] < own) {
                int to = fronts.at[block] + place[j] * height;
                for (int i = j; i < size; i++) {
                    values[to + place[i]] += waiting[from + i];
                }
            } else {
                int to = (place[j] - own) * later - own;
                for (int i = j; i < size; i++) {
                    update[to + place[i]] += waiting[from + i];
                }
            }
        }
    }

    private int factorColumns(int block) {
        int own = fronts.own(block);
        int height = fronts.rows(block);
        int base = fronts.at[block];
        for (int j = 0; j < own; j++) {
            int at = base + j * height;
            copy(values, at + j, column, 0, height - j);
            reduce(column, 0, base, height, j, j, height - j);
            double pivot = column[0];
            int unknown = fronts.first[block] + j;
            if (!(pivot > leastPivot * before[unknown])) {
                return unknown;
            }
            double root = Math.sqrt(pivot);
            values[at + j] = root;
            for (int i = 1; i < height - j; i++) {
                values[at + j + i] = column[i] / root;
            }
        }
        return -1;
    }

    private void reduceUpdate(int block) {
        int own = fronts.own(block);
        int height = fronts.rows(block);
        int later = height - own;
        for (int j = 0; j < later; j++) {
            reduce(update, j * later + j, fronts.at[block], height, own, own + j, later - j);
        }
    }

    /** Subtracts from a column the first {@code count} columns of a block, each times its own number in the row. */
    private void reduce(double[] to, int start, int base, int height, int count, int row, int length) {
        int k = 0;
        int at = base + row;
        for (; k + 4 <= count; k += 4) {
            four(to, start, values, at, height, length);
            at += 4 * height;
        }
        for (; k < count; k++) {
            double a = values[at];
            for (int i = 0; i < length; i++) {
                to[start + i] -= a * values[at + i];
            }
            at += height;
        }
    }

    private static void copy(double[] from, int at, double[] to, int start, int length) {
        for (int i = 0; i < length; i++) {
            to[start + i] = from[at + i];
        }
    }

    private static void four(double[] to, int start, double[] from, int at, int height, int length) {
        int b = at + height;
        int c = b + height;
        int d = c + height;
        double va = from[at];
        double vb = from[b];
        double vc = from[c];
        double vd = from[d];
        for (int i = 0; i < length; i++) {
            to[start + i] -= va * from[at + i] + vb * from[b + i] + vc * from[c + i] + vd * from[d + i];
        }
    }
}
