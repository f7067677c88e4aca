package pitchboard.strength.elements.algebra;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

final class OrderingTest {
    @RepeatedTest(20)
    void every_vertex_stands_in_it_once(RepetitionInfo repetition) {
        Random chance = new Random(repetition.getCurrentRepetition());
        int vertices = 1 + chance.nextInt(60);
        int[][] groups = new int[chance.nextInt(80)][];
        for (int i = 0; i < groups.length; i++) {
            groups[i] = chance.ints(1 + chance.nextInt(5), 0, vertices).toArray();
        }
        assertThat(Ordering.of(vertices, groups))
                .containsExactlyInAnyOrder(IntStream.range(0, vertices).toArray());
    }

    /** A strip of 200 by 3 squares whose vertices were numbered by chance can be as narrow as one column and two. */
    @Test
    void a_shuffled_strip_becomes_narrow_again() {
        int length = 200;
        int width = 4;
        List<Integer> names =
                new ArrayList<>(IntStream.range(0, length * width).boxed().toList());
        Collections.shuffle(names, new Random(5));
        List<int[]> squares = new ArrayList<>();
        for (int i = 0; i + 1 < length; i++) {
            for (int j = 0; j + 1 < width; j++) {
                int at = width * i + j;
                squares.add(
                        new int[] {names.get(at), names.get(at + 1), names.get(at + width), names.get(at + width + 1)});
            }
        }
        int[][] groups = squares.toArray(int[][]::new);
        assertThat(widest(groups, IntStream.range(0, length * width).toArray())).isGreaterThan(400);
        assertThat(widest(groups, Ordering.of(length * width, groups))).isLessThanOrEqualTo(2 * width + 1);
    }

    private static int widest(int[][] groups, int[] order) {
        int[] place = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        int widest = 0;
        for (int[] group : groups) {
            int[] places =
                    IntStream.of(group).map(vertex -> place[vertex]).sorted().toArray();
            widest = Math.max(widest, places[places.length - 1] - places[0]);
        }
        return widest;
    }
}
