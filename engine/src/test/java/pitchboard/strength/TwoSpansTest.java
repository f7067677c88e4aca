package pitchboard.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.measure.Length;

/** The equation of three moments; the tables of beams in every handbook have the case of equal spans. */
final class TwoSpansTest {
    private static final LineLoad LOAD = new LineLoad(2);

    private static Stream<Arguments> spans() {
        return IntStream.range(0, 60)
                .mapToObj(i -> Arguments.of(new TwoSpans(Length.mm(200 + 37L * i), Length.mm(3000 - 31L * i))));
    }

    /** Two equal spans: w·L² / 8 over the support, 3/8 and 10/8 of w·L on ends and middle, 5/8 beside it. */
    @Test
    void two_equal_spans_are_as_every_handbook_has_them() {
        TwoSpans spans = new TwoSpans(Length.mm(1000), Length.mm(1000));
        assertThat(spans.overSupport(LOAD).nMm()).isCloseTo(2 * 1000 * 1000 / 8.0, within(1e-6));
        assertThat(spans.atFirstEnd(LOAD).newtons()).isCloseTo(3 / 8.0 * 2000, within(1e-9));
        assertThat(spans.atSecondEnd(LOAD).newtons()).isCloseTo(3 / 8.0 * 2000, within(1e-9));
        assertThat(spans.atMiddle(LOAD).newtons()).isCloseTo(10 / 8.0 * 2000, within(1e-9));
        assertThat(spans.shear(LOAD).newtons()).isCloseTo(5 / 8.0 * 2000, within(1e-9));
    }

    /** By hand: a 2 m, b 1 m, w 2 N/mm: M = 2·(8 + 1)·10⁹ / (8·3·10³) = 750 000. */
    @Test
    void unequal_spans_worked_by_hand() {
        TwoSpans spans = new TwoSpans(Length.mm(2000), Length.mm(1000));
        assertThat(spans.overSupport(LOAD).nMm()).isCloseTo(750_000, within(1e-6));
        assertThat(spans.atFirstEnd(LOAD).newtons()).isCloseTo(2000 - 375, within(1e-9));
        assertThat(spans.atSecondEnd(LOAD).newtons()).isCloseTo(1000 - 750, within(1e-9));
        assertThat(spans.atMiddle(LOAD).newtons()).isCloseTo(2000 + 375 + 1000 + 750, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("spans")
    void reactions_sum_to_the_load(TwoSpans spans) {
        double all = spans.atFirstEnd(LOAD)
                .plus(spans.atSecondEnd(LOAD))
                .plus(spans.atMiddle(LOAD))
                .newtons();
        double load = LOAD.over(spans.first().plus(spans.second())).newtons();
        assertThat(all).isCloseTo(load, within(load * 1e-12));
    }

    /** So two beams that end over the support are on the safe side of one that runs on. */
    @ParameterizedTest
    @MethodSource("spans")
    void a_beam_that_ends_there_bends_no_less(TwoSpans spans) {
        double simple = new SimpleBeam(spans.longer()).moment(LOAD).nMm();
        assertThat(spans.overSupport(LOAD).nMm()).isLessThanOrEqualTo(simple * (1 + 1e-12));
        double ends = LOAD.over(spans.first().plus(spans.second())).newtons() / 2;
        assertThat(spans.atMiddle(LOAD).newtons()).isGreaterThanOrEqualTo(ends * (1 - 1e-12));
    }

    @Test
    void no_span_may_be_nothing() {
        assertThatThrownBy(() -> new TwoSpans(Length.ZERO, Length.mm(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above zero");
    }
}
