package pitchboard.strength.elements.algebra;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

final class DissectionTest {
    @RepeatedTest(20)
    void every_vertex_stands_in_it_once(RepetitionInfo repetition) {
        Random chance = new Random(repetition.getCurrentRepetition());
        int vertices = 1 + chance.nextInt(60);
        int[][] groups = new int[chance.nextInt(80)][];
        for (int i = 0; i < groups.length; i++) {
            groups[i] = chance.ints(1 + chance.nextInt(5), 0, vertices).toArray();
        }
        double[] x = chance.doubles(groups.length).toArray();
        double[] y = chance.doubles(groups.length).toArray();
        assertThat(Dissection.of(vertices, groups, x, y).order())
                .containsExactlyInAnyOrder(IntStream.range(0, vertices).toArray());
    }

    /** A strip of 200 by 3 squares: no cut is longer than across it, and two of them bound a piece. */
    @Test
    void a_strip_is_cut_across() {
        Dissection cut = squares(200, 3);
        for (int block = 0; block < cut.blocks(); block++) {
            assertThat(cut.end(block) - cut.start(block)).isLessThanOrEqualTo(6);
            assertThat(cut.beyond(block).length).isLessThanOrEqualTo(12);
        }
    }

    /** George's bound for squares, 31/4 n log n numbers (from memory). */
    @Test
    void a_large_square_fills_up_little() {
        int vertices = 65 * 65;
        int[] unknowns = IntStream.range(0, vertices).map(i -> 1).toArray();
        SparseMatrix matrix = new SparseMatrix(squares(64, 64), unknowns);
        assertThat((double) matrix.kept()).isLessThan(31.0 / 4 * vertices * Math.log(vertices) / Math.log(2));
    }

    private static Dissection squares(int length, int width) {
        int[][] squares = IntStream.range(0, length * width)
                .mapToObj(i -> {
                    int at = i / width * (width + 1) + i % width;
                    return new int[] {at, at + 1, at + width + 1, at + width + 2};
                })
                .toArray(int[][]::new);
        double[] x = new double[squares.length];
        double[] y = new double[squares.length];
        for (int i = 0; i < squares.length; i++) {
            x[i] = Math.floorDiv(i, width);
            y[i] = i % width;
        }
        return Dissection.of((length + 1) * (width + 1), squares, x, y);
    }
}
