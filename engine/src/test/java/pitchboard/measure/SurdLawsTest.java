package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

final class SurdLawsTest {
    private static final int DRAWS = 10_000;
    private static final MathContext SIXTY_DIGITS = new MathContext(60, RoundingMode.HALF_EVEN);

    @Test
    void the_floor_agrees_with_sixty_digits() {
        Draws.times(DRAWS, 11, draws -> {
            Surd surd = surd(draws, draws.between(1, 5_000));
            assertThat(surd.floor())
                    .as(surd.toString())
                    .isEqualTo(digits(surd).setScale(0, RoundingMode.FLOOR).toBigInteger());
        });
    }

    @Test
    void the_sign_agrees_with_sixty_digits_also_close_to_zero() {
        Draws.times(DRAWS, 12, draws -> {
            Surd root = Surd.of(Ratio.ZERO, draws.jobRatio(), BigInteger.valueOf(draws.between(2, 5_000)));
            BigInteger scale = BigInteger.TEN.pow((int) draws.between(0, 20));
            Ratio near = Ratio.of(root.times(Ratio.of(scale, BigInteger.ONE)).floor(), scale);
            Surd tiny = root.plus(Surd.of(near.negated()));
            assertThat(tiny.signum()).as(tiny.toString()).isEqualTo(digits(tiny).signum());
        });
    }

    @Test
    void order_agrees_with_sixty_digits_whatever_the_radicands() {
        Draws.times(DRAWS, 13, draws -> {
            Surd a = surd(draws, draws.between(1, 50));
            Surd b = surd(draws, draws.between(1, 50));
            int expected = digits(a).compareTo(digits(b));
            assertThat(Integer.signum(a.compareTo(b))).as(a + " and " + b).isEqualTo(expected);
            assertThat(Integer.signum(b.compareTo(a))).as(b + " and " + a).isEqualTo(-expected);
        });
    }

    @Test
    void numbers_that_agree_in_forty_digits_are_still_told_apart() {
        Surd root = Surd.of(Ratio.ZERO, Ratio.ONE, BigInteger.TWO);
        BigInteger scale = BigInteger.TEN.pow(40);
        Ratio below = Ratio.of(root.times(Ratio.of(scale, BigInteger.ONE)).floor(), scale);
        Surd other = Surd.of(below, Ratio.of(BigInteger.ONE, BigInteger.TEN.pow(60)), BigInteger.valueOf(3));
        assertThat(root.compareTo(other)).isPositive();
        assertThat(other.compareTo(root)).isNegative();
    }

    @Test
    void one_number_written_over_two_radicands_is_one_number() {
        Draws.times(DRAWS, 14, draws -> {
            long radicand = draws.between(2, 5_000);
            long factor = draws.between(1, 300);
            Ratio rational = draws.jobRatio();
            Ratio coefficient = draws.jobRatio();
            Surd plain = Surd.of(rational, coefficient, BigInteger.valueOf(radicand));
            Surd other = Surd.of(
                    rational, coefficient.dividedBy(Ratio.of(factor)), BigInteger.valueOf(radicand * factor * factor));
            assertThat(other).isEqualTo(plain).hasSameHashCodeAs(plain).isEqualByComparingTo(plain);
            assertThat(other.approx()).isEqualTo(plain.approx());
            assertThat(plain.plus(other)).isEqualTo(plain.times(Ratio.of(2)));
            assertThat(other.plus(plain.negated())).isEqualTo(Surd.ZERO);
        });
    }

    @Test
    void sums_over_two_forms_of_one_radicand_agree_with_sixty_digits() {
        Draws.times(DRAWS, 15, draws -> {
            long radicand = draws.between(2, 5_000);
            long factor = draws.between(1, 300);
            Surd a = surd(draws, radicand);
            Surd b = surd(draws, radicand * factor * factor);
            BigDecimal sum = digits(a).add(digits(b));
            assertThat(digits(a.plus(b)).subtract(sum).abs()).isLessThan(new BigDecimal("1e-45"));
        });
    }

    @Test
    void multiplying_by_a_root_twice_multiplies_by_its_square() {
        Draws.times(DRAWS, 16, draws -> {
            BigInteger radicand = BigInteger.valueOf(draws.between(1, 5_000));
            Ratio factor = draws.jobRatio();
            Surd surd = surd(draws, radicand.longValue());
            Ratio square = factor.times(factor).times(Ratio.of(radicand, BigInteger.ONE));
            assertThat(surd.timesRoot(factor, radicand).timesRoot(factor, radicand))
                    .isEqualTo(surd.times(square));
        });
    }

    @Test
    void the_approximation_agrees_with_sixty_digits() {
        Draws.times(DRAWS, 17, draws -> {
            Ratio positive = draws.jobRatio().abs().plus(Ratio.ONE);
            Surd surd = Surd.of(positive, positive, BigInteger.valueOf(draws.between(2, 5_000)));
            assertThat(surd.approx()).isCloseTo(digits(surd).doubleValue(), Percentage.withPercentage(1e-13));
        });
    }

    @Test
    void a_square_under_the_root_leaves_a_plain_fraction() {
        assertThat(Surd.of(Ratio.ONE, Ratio.of(1, 2), BigInteger.valueOf(625))).isEqualTo(Surd.of(Ratio.of(27, 2)));
        assertThat(Surd.of(Ratio.ONE, Ratio.ZERO, BigInteger.TWO).isRational()).isTrue();
    }

    @Test
    void roots_with_nothing_in_common_are_not_added() {
        Surd two = Surd.of(Ratio.ONE, Ratio.ONE, BigInteger.TWO);
        Surd three = Surd.of(Ratio.ONE, Ratio.ONE, BigInteger.valueOf(3));
        assertThatThrownBy(() -> two.plus(three))
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("lengths along two different slopes cannot be added exactly");
    }

    private static Surd surd(Draws draws, long radicand) {
        return Surd.of(draws.jobRatio(), draws.jobRatio(), BigInteger.valueOf(radicand));
    }

    private static BigDecimal digits(Surd surd) {
        BigDecimal root = new BigDecimal(surd.radicand()).sqrt(SIXTY_DIGITS);
        return digits(surd.rational()).add(digits(surd.coefficient()).multiply(root));
    }

    private static BigDecimal digits(Ratio ratio) {
        return new BigDecimal(ratio.numerator()).divide(new BigDecimal(ratio.denominator()), SIXTY_DIGITS);
    }
}
