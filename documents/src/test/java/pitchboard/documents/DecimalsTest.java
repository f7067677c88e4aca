package pitchboard.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DecimalsTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 0
            -0.0, 0
            -0.00004, 0
            12, 12
            12.5, 12.5
            -3.0625, -3.0625
            0.0001, 0.0001
            0.00006, 0.0001
            25.40000000001, 25.4
            1234567.89, 1234567.89
            """)
    void numbers_have_at_most_four_decimals_and_nothing_to_spare(double value, String written) {
        assertThat(Decimals.of(value)).isEqualTo(written);
    }

    @Test
    void every_number_is_its_own_rounding_to_four_decimals() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            double value = random.nextDouble(-3000, 3000);
            BigDecimal exact = new BigDecimal(value).setScale(4, RoundingMode.HALF_EVEN);
            assertThat(new BigDecimal(Decimals.of(value))).isEqualByComparingTo(exact);
        }
    }
}
