package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

final class RatioLawsTest {
    private static final int DRAWS = 20_000;
    /** Far more digits than two numbers of 90 bits can hide a difference behind. */
    private static final MathContext SIXTY_DIGITS = new MathContext(60, RoundingMode.HALF_EVEN);

    @Test
    void what_is_added_can_be_taken_away() {
        Draws.times(DRAWS, 1, draws -> {
            Ratio a = draws.ratio();
            Ratio b = draws.ratio();
            assertThat(a.plus(b).minus(b)).isEqualTo(a).hasSameHashCodeAs(a);
        });
    }

    @Test
    void what_is_multiplied_can_be_divided() {
        Draws.times(DRAWS, 2, draws -> {
            Ratio a = draws.ratio();
            Ratio b = Ratio.of(draws.wholeButZero(), draws.wholeButZero());
            assertThat(a.times(b).dividedBy(b)).isEqualTo(a).hasSameHashCodeAs(a);
        });
    }

    @Test
    void multiplication_spreads_over_addition() {
        Draws.times(DRAWS, 3, draws -> {
            Ratio a = draws.ratio();
            Ratio b = draws.ratio();
            Ratio c = draws.ratio();
            assertThat(a.times(b.plus(c))).isEqualTo(a.times(b).plus(a.times(c)));
        });
    }

    @Test
    void arithmetic_agrees_with_sixty_digits() {
        Draws.times(DRAWS, 4, draws -> {
            Ratio a = draws.ratio();
            Ratio b = draws.ratio();
            assertThat(digits(a.plus(b))).isCloseTo(digits(a).add(digits(b)), within(a, b));
            assertThat(Integer.signum(a.compareTo(b))).isEqualTo(digits(a).compareTo(digits(b)));
        });
    }

    @Test
    void every_ratio_is_in_lowest_terms() {
        Draws.times(DRAWS, 5, draws -> {
            Ratio sum = draws.ratio().plus(draws.jobRatio());
            assertThat(sum.denominator()).isPositive();
            assertThat(sum.numerator().gcd(sum.denominator())).isEqualTo(BigInteger.ONE);
        });
    }

    @Test
    void the_floor_is_the_last_whole_number_not_above() {
        Draws.times(DRAWS, 6, draws -> {
            Ratio a = draws.ratio();
            Ratio rest = a.minus(Ratio.of(a.floor(), BigInteger.ONE));
            assertThat(rest).isGreaterThanOrEqualTo(Ratio.ZERO).isLessThan(Ratio.ONE);
        });
    }

    @Test
    void the_nearest_whole_number_is_within_a_half_and_has_a_mirror() {
        Draws.times(DRAWS, 7, draws -> {
            Ratio a = draws.ratio();
            Ratio gap = a.minus(Ratio.of(a.nearest(), BigInteger.ONE));
            assertThat(gap.abs()).isLessThanOrEqualTo(Ratio.of(1, 2));
            assertThat(a.negated().nearest()).isEqualTo(a.nearest().negate());
        });
    }

    @Test
    void the_approximation_is_the_nearest_double() {
        Draws.times(DRAWS, 8, draws -> {
            Ratio a = draws.ratio();
            assertThat(a.approx()).isEqualTo(digits(a).doubleValue());
        });
    }

    private static BigDecimal digits(Ratio ratio) {
        return new BigDecimal(ratio.numerator()).divide(new BigDecimal(ratio.denominator()), SIXTY_DIGITS);
    }

    private static Offset<BigDecimal> within(Ratio a, Ratio b) {
        BigDecimal size = digits(a).abs().add(digits(b).abs()).add(BigDecimal.ONE);
        return Offset.offset(size.movePointLeft(58));
    }
}
