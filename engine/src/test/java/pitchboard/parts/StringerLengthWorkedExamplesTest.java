package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/**
 * TAFE NSW carpentry teaching slides (Carp 18), slide set 4242855: 850 high in 5 risers of 170, 4 goings of 275; the
 * string is the slope over the rise and the goings with one more; order two of 1.8 m, 3.6 m in all, and four treads of
 * 1.2 m, 4.8 m in all. The digits of the string's length are missing in the copy; 1616.5 is own arithmetic.
 */
final class StringerLengthWorkedExamplesTest {
    private static final Stair STAIR = OrdinaryJob.ofRise(Length.mm(850))
            .treads(Length.mm(300), Length.mm(40))
            .width(Length.mm(1200), 2, Length.ZERO)
            .stair(5, Length.mm(275));

    @Test
    void five_steps_along_the_slope() {
        Length string = StringerLayout.of(STAIR).stepAlongEdge().times(5);
        assertThat(string.approxMm()).isCloseTo(1616.5, within(0.05));
        assertThat(string).isEqualTo(Length.diagonal(Length.mm(850), Length.mm(1375)));
    }

    @Test
    void our_stringers_come_out_of_the_boards_they_order() {
        assertThat(StringerLayout.of(STAIR).boardNeeded()).isLessThan(Length.mm(1800));
        assertThat(PartMaker.partsOf(STAIR))
                .filteredOn(part -> part.id().equals(PartId.STRINGER))
                .extracting(Part::count)
                .containsExactly(2);
    }

    @Test
    void our_treads_are_the_ones_they_order() {
        assertThat(PartMaker.partsOf(STAIR))
                .filteredOn(part -> part.id().equals(PartId.TREAD))
                .allSatisfy(
                        tread -> assertThat(tread.length().times(tread.count())).isEqualTo(Length.mm(4800)));
    }
}
