package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Tape.Units;

final class ExactTextTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            54,  7, 7 5/7 in
            31,  4, 7 3/4 in
            12,  1, 12 in
            0,   1, 0 in
            -1,  3, -1/3 in
            -54, 7, -7 5/7 in
            """)
    void inches_keep_every_fraction(long numerator, long denominator, String expected) {
        assertThat(ExactText.write(Length.inches(Ratio.of(numerator, denominator)), Units.INCHES))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2718,  15, 181.2 mm
            1270,  7,  181 3/7 mm
            2686,  1,  2686 mm
            1,     64, 0.015625 mm
            1,     128, 1/128 mm
            -1,    2,  -0.5 mm
            """)
    void millimetres_are_decimals_where_decimals_are_exact(long numerator, long denominator, String expected) {
        assertThat(ExactText.write(Length.mm(Ratio.of(numerator, denominator)), Units.MILLIMETRES))
                .isEqualTo(expected);
    }

    @Test
    void a_length_along_a_slope_says_that_it_is_rounded() {
        Length along = Length.diagonal(Length.inches(7), Length.inches(10));
        assertThat(ExactText.write(along, Units.INCHES)).isEqualTo("≈ 12.206556 in");
        assertThat(ExactText.write(along, Units.MILLIMETRES)).isEqualTo("≈ 310.046513 mm");
        assertThat(ExactText.write(along.negated(), Units.INCHES)).isEqualTo("≈ -12.206556 in");
        Length threeFourFive = Length.diagonal(Length.inches(7, 1, 2), Length.inches(10));
        assertThat(ExactText.write(threeFourFive, Units.INCHES)).isEqualTo("12 1/2 in");
    }
}
