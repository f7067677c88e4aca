package pitchboard.strength.elements.algebra;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Our own factor beside that of a general library, EJML. */
final class SkylineTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7, 30, 101, 160})
    void it_solves_what_the_library_solves(int size) {
        Random chance = new Random(size);
        int[] first = new int[size];
        for (int row = 0; row < size; row++) {
            first[row] = Math.max(0, row - chance.nextInt(25));
        }
        double[][] full = new double[size][size];
        Skyline ours = new Skyline(first);
        for (int row = 0; row < size; row++) {
            for (int column = first[row]; column <= row; column++) {
                double value = row == column ? 30 + chance.nextDouble() : chance.nextDouble() - 0.5;
                ours.add(row, column, value);
                full[row][column] = value;
                full[column][row] = value;
            }
        }
        double[] right = chance.doubles(size, -1, 1).toArray();
        SimpleMatrix theirs = new SimpleMatrix(full).solve(new SimpleMatrix(size, 1, true, right));
        assertThat(ours.factor()).isEqualTo(-1);
        double[] x = ours.solve(right);
        for (int row = 0; row < size; row++) {
            assertThat(x[row]).isCloseTo(theirs.get(row), within(1e-13));
        }
    }

    /** With a negative middle: row 1 loses its pivot. */
    @Test
    void it_names_the_row_that_can_move() {
        Skyline loose = new Skyline(new int[] {0, 0, 1});
        loose.add(0, 0, 4);
        loose.add(1, 0, 2);
        loose.add(1, 1, 1);
        loose.add(2, 2, 1);
        assertThat(loose.factor()).isEqualTo(1);
    }

    @Test
    void no_numbers_at_all_are_a_row_that_can_move() {
        assertThat(new Skyline(new int[] {0}).factor()).isZero();
    }

    @Test
    void adding_twice_adds_up() {
        Skyline matrix = new Skyline(new int[] {0});
        matrix.add(0, 0, 1);
        matrix.add(0, 0, 3);
        matrix.factor();
        assertThat(matrix.solve(new double[] {8})).containsExactly(2);
    }

    @Test
    void too_large_is_said_before_memory_runs_out() {
        int[] first = new int[20_000];
        Arrays.fill(first, 0);
        assertThatThrownBy(() -> new Skyline(first)).isInstanceOf(TooLarge.class);
    }
}
