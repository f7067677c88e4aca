package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RatioTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            6,   8,  3/4
            -6,  8,  -3/4
            6,  -8,  -3/4
            -6, -8,  3/4
            0,  -5,  0
            14,  7,  2
            -9223372036854775808, -9223372036854775808, 1
            -9223372036854775808, 1, -9223372036854775808
            9223372036854775807, 2, 9223372036854775807/2
            """)
    void a_ratio_is_in_lowest_terms_with_its_sign_on_top(long numerator, long denominator, String expected) {
        assertThat(Ratio.of(numerator, denominator)).hasToString(expected);
        assertThat(Ratio.of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator)))
                .hasToString(expected);
    }

    @Test
    void nothing_is_divided_into_no_parts() {
        assertThatThrownBy(() -> Ratio.of(3, 0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Ratio.of(BigInteger.TEN, BigInteger.ZERO)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Ratio.ONE.dividedBy(Ratio.ZERO)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(Ratio.ZERO::inverse).isInstanceOf(ArithmeticException.class);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            7,  2,   3,  4
            -7, 2,  -4, -4
            1,  2,   0,  1
            -1, 2,  -1, -1
            5,  3,   1,  2
            -5, 3,  -2, -2
            -4, 3,  -2, -1
            6,  3,   2,  2
            """)
    void the_floor_goes_down_and_the_nearest_takes_halves_away_from_zero(
            long numerator, long denominator, long floor, long nearest) {
        Ratio ratio = Ratio.of(numerator, denominator);
        assertThat(ratio.floor()).isEqualTo(floor);
        assertThat(ratio.nearest()).isEqualTo(nearest);
    }

    @Test
    void a_number_that_outgrows_a_long_stays_exact_and_comes_back() {
        Ratio large = Ratio.of(Long.MAX_VALUE).times(Long.MAX_VALUE);
        assertThat(large).hasToString("85070591730234615847396907784232501249");
        assertThat(large.dividedBy(Ratio.of(Long.MAX_VALUE)).dividedBy(Ratio.of(Long.MAX_VALUE)))
                .isEqualTo(Ratio.ONE)
                .hasSameHashCodeAs(Ratio.ONE);
    }

    @Test
    void the_nearest_double_survives_numbers_no_double_holds() {
        BigInteger huge = BigInteger.TEN.pow(400);
        assertThat(Ratio.of(
                                huge.multiply(BigInteger.valueOf(3)),
                                huge.multiply(BigInteger.valueOf(-4)).add(BigInteger.ONE))
                        .approx())
                .isEqualTo(-0.75);
        assertThat(Ratio.of(huge, BigInteger.ONE).approx()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Ratio.of(BigInteger.ONE, huge).approx()).isZero();
    }
}
