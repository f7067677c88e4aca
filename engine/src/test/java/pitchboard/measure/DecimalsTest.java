package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class DecimalsTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            1,    2, 0, 1,        1
            -1,   2, 0, -1,       -1
            -1,   3, 0, 0,        0
            1,    8, 2, 0.13,     0.13
            -1,   8, 2, -0.13,    -0.13
            54,   7, 3, 7.714,    7.714
            15,   2, 3, 7.500,    7.5
            120,  1, 2, 120.00,   120
            0,    1, 2, 0.00,     0
            -1, 1000, 2, 0.00,    0
            999, 1000, 2, 1.00,   1
            """)
    void a_ratio_is_rounded_once_with_halves_away_from_zero(
            long numerator, long denominator, int places, String fixed, String trimmed) {
        Ratio ratio = Ratio.of(numerator, denominator);
        assertThat(Decimals.fixed(ratio, places)).isEqualTo(fixed);
        assertThat(Decimals.trimmed(ratio, places)).isEqualTo(trimmed);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.5,          0, 1,          1
            -2.5,         0, -3,         -3
            1.005,        2, 1.01,       1.01
            1.05,         1, 1.1,        1.1
            -0.004,       2, 0.00,       0
            -0.0,         1, 0.0,        0
            120.0,        3, 120.000,    120
            1e-12,        9, 0.000000000, 0
            36.86989764584402, 1, 36.9,  36.9
            123456789.125, 2, 123456789.13, 123456789.13
            1e16,         1, 10000000000000000.0, 10000000000000000
            """)
    void a_double_is_written_as_the_decimal_number_it_stands_for(
            double value, int places, String fixed, String trimmed) {
        assertThat(Decimals.fixed(value, places)).isEqualTo(fixed);
        assertThat(Decimals.trimmed(value, places)).isEqualTo(trimmed);
    }

    /** Because the browser's sine differs from the desktop's in the last bits, and the papers must not. */
    @Test
    void neighbouring_doubles_read_the_same_even_at_a_half() {
        double half = 0.125;
        assertThat(Decimals.fixed(Math.nextDown(half), 2))
                .isEqualTo(Decimals.fixed(half, 2))
                .isEqualTo("0.13");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0.5,     0, 1
            1.5,     0, 2
            2.5,     0, 3
            -2.5,    0, -3
            0.125,   2, 0.13
            -0.125,  2, -0.13
            -0.004,  2, 0
            12.34565, 4, 12.3457
            1e300,   4, 1e300
            """)
    void a_double_is_rounded_with_halves_away_from_zero(double value, int places, double expected) {
        assertThat(Decimals.rounded(value, places)).isEqualTo(expected);
        assertThat(Double.toString(Decimals.rounded(-0.0, places))).isEqualTo("0.0");
    }

    @Test
    void a_rounded_double_goes_back_to_a_fraction() {
        assertThat(Decimals.ratio(0.1, 9)).isEqualTo(Ratio.of(1, 10));
        assertThat(Decimals.ratio(-42.5, 0)).isEqualTo(Ratio.of(-43));
        assertThatThrownBy(() -> Decimals.ratio(1e16, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Decimals.ratio(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void what_is_no_number_is_not_written(double value) {
        assertThatThrownBy(() -> Decimals.fixed(value, 2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ratios_read_as_the_library_rounds_them() {
        Draws.times(10_000, 41, draws -> {
            Ratio ratio = draws.ratio();
            int places = (int) draws.between(0, 9);
            BigDecimal expected = new BigDecimal(ratio.numerator())
                    .divide(new BigDecimal(ratio.denominator()), places, RoundingMode.HALF_UP);
            assertThat(Decimals.fixed(ratio, places)).isEqualTo(expected.toPlainString());
            assertThat(new BigDecimal(Decimals.trimmed(ratio, places))).isEqualByComparingTo(expected);
        });
    }

    @Test
    void doubles_read_as_the_library_rounds_them_once_the_noise_is_gone() {
        Draws.times(10_000, 42, draws -> {
            double value = draws.between(-4_000_000_000L, 4_000_000_000L) / (double) draws.between(1, 99_999);
            int places = (int) draws.between(0, 6);
            BigDecimal kept = new BigDecimal(value).setScale(9, RoundingMode.HALF_EVEN);
            BigDecimal expected = kept.setScale(places, RoundingMode.HALF_UP);
            BigDecimal written = new BigDecimal(Decimals.fixed(value, places));
            assertThat(written.scale()).isEqualTo(places);
            assertThat(written).isEqualByComparingTo(expected);
        });
    }
}
