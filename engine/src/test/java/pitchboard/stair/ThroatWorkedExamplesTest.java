package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.parts.StringerLayout;

/** Steps along the edge, notches and throats of common pairs. Own arithmetic to the place given, at half a unit of it. */
final class ThroatWorkedExamplesTest {
    private static final double THOUSANDTH = 0.0005;

    private static StringerShape shape(String rise, String run, Length depth) {
        Stair stair =
                OrdinaryJob.ofRise(Read.inches(rise).times(10)).stock(depth).stair(10, Read.inches(run));
        return new StringerShape(stair);
    }

    private static double inches(Length length) {
        return length.approxMm() / 25.4;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # rise | run    | along   | notch | left of 11 1/4 | left of 9 1/4
            7      | 10     | 12.2066 | 5.735 | 5.515          | 3.515
            7      | 11     | 13.0384 | 5.906 | 5.344          | 3.344
            7 1/8  | 10 3/8 | 12.5860 | 5.873 | 5.377          | 3.377
            7 1/4  | 10     | 12.3516 | 5.870 | 5.380          | 3.380
            7 1/4  | 10 1/2 | 12.7598 | 5.966 | 5.284          | 3.284
            7 1/2  | 10     | 12.5000 | 6.000 | 5.250          | 3.250
            7 1/2  | 11     | 13.3135 | 6.197 | 5.053          | 3.053
            7 3/4  | 10     | 12.6516 | 6.126 | 5.124          | 3.124
            """)
    void notch_and_throat_of_a_pair(
            String rise, String run, double along, double notch, double deepThroat, double shallowThroat) {
        StringerShape deep = shape(rise, run, Length.inches(11, 1, 4));
        StringerShape shallow = shape(rise, run, Length.inches(9, 1, 4));
        assertThat(inches(StringerLayout.of(deep.stair()).stepAlongEdge())).isCloseTo(along, within(0.00005));
        assertThat(inches(deep.notchDepth())).isCloseTo(notch, within(THOUSANDTH));
        assertThat(inches(deep.throat())).isCloseTo(deepThroat, within(THOUSANDTH));
        assertThat(inches(shallow.throat())).isCloseTo(shallowThroat, within(THOUSANDTH));
        // 90 mm (3 1/2 in) left of a 235 mm board: National Building Code of Canada 9.8.9.4. None of these leaves it.
        assertThat(shallow.throat()).isLessThan(Length.mm(90));
    }

    /** National Building Code of Canada 9.8.9.4: 90 mm left, boards of 235 mm and more. The throats are own arithmetic. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # depth | rise   | run    | throat
            235     | 200 mm | 255 mm | 78
            286     | 200 mm | 255 mm | 129
            """)
    void the_least_board_allowed_fails_the_least_throat_allowed(long depth, String rise, String run, double throat) {
        assertThat(shape(rise, run, Length.mm(depth)).throat().approxMm()).isCloseTo(throat, within(0.5));
    }
}
