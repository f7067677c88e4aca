package pitchboard.strength.elements.algebra;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Our own factor beside that of a general library, EJML. */
final class SparseMatrixTest {
    /** Points in a box, each group of some that lie near each other; vertices with no unknown, one, two or three. */
    private static final class Case {
        final int[][] groups;
        final double[] x;
        final double[] y;
        final int[] unknowns;

        Case(Random chance) {
            int vertices = 1 + chance.nextInt(60);
            double[] px = chance.doubles(vertices, 0, 10).toArray();
            double[] py = chance.doubles(vertices, 0, 3).toArray();
            groups = new int[1 + chance.nextInt(90)][];
            x = chance.doubles(groups.length, 0, 10).toArray();
            y = chance.doubles(groups.length, 0, 3).toArray();
            for (int i = 0; i < groups.length; i++) {
                int group = i;
                Comparator<Integer> near =
                        Comparator.comparingDouble(v -> Math.hypot(px[v] - x[group], py[v] - y[group]));
                groups[i] = IntStream.range(0, vertices)
                        .boxed()
                        .sorted(near)
                        .limit(1 + chance.nextInt(6))
                        .mapToInt(Integer::intValue)
                        .toArray();
            }
            unknowns = chance.ints(vertices, 0, 4).toArray();
        }
    }

    @RepeatedTest(60)
    void it_solves_what_the_library_solves(RepetitionInfo repetition) {
        Random chance = new Random(repetition.getCurrentRepetition());
        Case given = new Case(chance);
        int vertices = given.unknowns.length;
        SparseMatrix ours = new SparseMatrix(Dissection.of(vertices, given.groups, given.x, given.y), given.unknowns);
        int size = ours.size();
        assertThat(size).isEqualTo(IntStream.of(given.unknowns).sum());
        double[][] full = new double[size][size];
        for (int[] group : given.groups) {
            int[] meant = IntStream.of(group)
                    .flatMap(vertex ->
                            IntStream.range(0, given.unknowns[vertex]).map(i -> ours.firstUnknowns()[vertex] + i))
                    .toArray();
            addByChance(ours, full, meant, chance);
        }
        for (int i = 0; i < size; i++) {
            ours.add(new int[] {i}, 1, new double[] {1});
            full[i][i] += 1;
        }
        double[] right = chance.doubles(size, -1, 1).toArray();
        assertThat(ours.factor()).isEqualTo(-1);
        double[] x = ours.solve(right);
        if (size > 0) {
            SimpleMatrix theirs = new SimpleMatrix(full).solve(new SimpleMatrix(size, 1, true, right));
            for (int row = 0; row < size; row++) {
                assertThat(x[row]).isCloseTo(theirs.get(row), within(1e-12));
            }
        }
    }

    /** The square of a matrix by chance, so that nothing in it can go below zero; one unknown may stand there twice. */
    private static void addByChance(SparseMatrix ours, double[][] full, int[] meant, Random chance) {
        int count = meant.length;
        int[] unknowns = meant.clone();
        if (count > 1 && chance.nextInt(4) == 0) {
            unknowns[count - 1] = unknowns[0];
        }
        double[][] some = new double[count][];
        for (int i = 0; i < count; i++) {
            some[i] = chance.doubles(count, -1, 1).toArray();
        }
        double[] values = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                for (int k = 0; k < count; k++) {
                    values[count * i + j] += some[i][k] * some[j][k];
                }
                full[unknowns[i]][unknowns[j]] += values[count * i + j];
            }
        }
        ours.add(unknowns, count, values);
    }

    private static SparseMatrix chain(int length) {
        int[][] groups = IntStream.range(0, length - 1)
                .mapToObj(i -> new int[] {i, i + 1})
                .toArray(int[][]::new);
        double[] places = IntStream.range(0, length - 1).mapToDouble(i -> i).toArray();
        int[] unknowns = IntStream.range(0, length).map(i -> 1).toArray();
        return new SparseMatrix(Dissection.of(length, groups, places, places), unknowns);
    }

    /** A row of springs that nothing holds moves along. */
    @Test
    void it_names_an_unknown_that_can_move() {
        SparseMatrix loose = chain(50);
        int[] at = loose.firstUnknowns();
        for (int i = 0; i < 49; i++) {
            loose.add(new int[] {at[i], at[i + 1]}, 2, new double[] {1, -1, -1, 1});
        }
        assertThat(loose.factor()).isEqualTo(49);
    }

    @Test
    void no_numbers_at_all_are_an_unknown_that_can_move() {
        assertThat(chain(2).factor()).isZero();
    }

    @Test
    void adding_twice_adds_up() {
        SparseMatrix matrix = chain(1);
        matrix.add(new int[] {0}, 1, new double[] {1});
        matrix.add(new int[] {0}, 1, new double[] {3});
        matrix.factor();
        assertThat(matrix.solve(new double[] {8})).containsExactly(2);
    }

    @Test
    void too_large_is_said_before_memory_runs_out() {
        int[][] all = {IntStream.range(0, 9_000).toArray()};
        int[] unknowns = IntStream.range(0, 9_000).map(i -> 1).toArray();
        Dissection whole = Dissection.of(9_000, all, new double[1], new double[1]);
        assertThatThrownBy(() -> new SparseMatrix(whole, unknowns)).isInstanceOf(TooLarge.class);
    }
}
