package pitchboard.railing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pitchboard.StairFixtures;
import pitchboard.measure.Length;

/**
 * The brackets of a handrail on a wall. The guide of the CMHC to the National Building Code of Canada: at most 1.2 m apart,
 * the first within 300 mm of the end.
 */
final class BracketsTest {
    private static final Length FROM_THE_END = Length.mm(300);

    /** Own arithmetic: 160 in less 10 in at both ends is 140 in; 4 spaces of 35 in would be too wide, 5 are 28 in. */
    @Test
    void as_few_as_keep_within_the_most_they_are_to_be_apart() {
        Brackets brackets = new Brackets(Length.inches(160), Length.inches(10), Length.inches(32));
        assertThat(brackets.apart()).isEqualTo(Length.inches(28));
        assertThat(brackets.places())
                .containsExactly(
                        Length.inches(10),
                        Length.inches(38),
                        Length.inches(66),
                        Length.inches(94),
                        Length.inches(122),
                        Length.inches(150));
    }

    @Test
    void spaces_of_just_the_most_are_enough() {
        assertThat(new Brackets(Length.inches(116), Length.inches(10), Length.inches(32)).places())
                .hasSize(4);
        assertThat(new Brackets(Length.inches(116, 1, 16), Length.inches(10), Length.inches(32)).places())
                .hasSize(5);
    }

    @Test
    void near_both_ends_evenly_apart_and_none_too_many() {
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < 500; i++) {
            Length rail = Length.mm(random.nextInt(600, 9000));
            Length most = Length.mm(random.nextInt(300, 1201));
            Length ends = Length.min(Length.mm(250), rail.dividedBy(4));
            Brackets brackets = new Brackets(rail, ends, most);
            List<Length> places = brackets.places();
            assertThat(places.get(0)).isLessThanOrEqualTo(FROM_THE_END);
            assertThat(rail.minus(places.get(places.size() - 1))).isEqualTo(places.get(0));
            assertThat(brackets.apart()).isLessThanOrEqualTo(most);
            Length fewer = rail.minus(ends.times(2)).dividedBy(Math.max(1, places.size() - 2));
            assertThat(places.size() == 2 || fewer.isMoreThan(most)).isTrue();
        }
    }

    @Test
    void only_a_handrail_on_a_wall_has_them() {
        assertThat(Brackets.find(StairFixtures.stair("rails left; left wall; brackets 32 in")))
                .isPresent();
        assertThat(Brackets.find(StairFixtures.stair("rails right; right open; brackets 32 in")))
                .isEmpty();
        assertThat(Brackets.find(StairFixtures.stair("rails left; left wall; brackets ?")))
                .isEmpty();
    }

    @Test
    void on_either_tape_the_first_is_within_reach_of_the_end() {
        for (String tape : List.of("inches", "millimetres")) {
            Brackets brackets = Brackets.find(
                            StairFixtures.stair("rails left; left wall; brackets 1200 mm; tape " + tape))
                    .orElseThrow();
            assertThat(brackets.ends()).isLessThanOrEqualTo(FROM_THE_END);
        }
    }
}
