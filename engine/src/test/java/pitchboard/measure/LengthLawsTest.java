package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LengthLawsTest {
    private static final int DRAWS = 10_000;
    private static final MathContext SIXTY_DIGITS = new MathContext(60, RoundingMode.HALF_EVEN);
    private static final List<Graduation> GRADUATIONS = List.of(Graduation.values());

    @Test
    void dividing_and_adding_back_loses_nothing() {
        Draws.times(DRAWS, 21, draws -> {
            Length total = draws.jobLength();
            int parts = (int) draws.between(1, 40);
            Length part = total.dividedBy(parts);
            Length sum = Length.ZERO;
            for (int i = 0; i < parts; i++) {
                sum = sum.plus(part);
            }
            assertThat(sum).isEqualTo(total).hasSameHashCodeAs(total);
        });
    }

    @Test
    void rounding_lands_on_a_line_within_half_a_graduation() {
        Draws.times(DRAWS, 22, draws -> {
            Graduation graduation = draws.oneOf(GRADUATIONS);
            Length exact = draws.pitch().alongForLevel(draws.jobLength());
            Length line = exact.rounded(graduation);
            assertThat(line.over(graduation.step()).isWhole()).isTrue();
            assertThat(line.minus(exact).abs().times(2)).isLessThanOrEqualTo(graduation.step());
        });
    }

    @Test
    void rounding_has_a_mirror_at_zero() {
        Draws.times(DRAWS, 23, draws -> {
            Graduation graduation = draws.oneOf(GRADUATIONS);
            Length exact = draws.oneOf(List.of(
                    draws.jobLength(),
                    graduation.step().dividedBy(2).times(draws.between(-999, 999)),
                    draws.pitch().alongForLevel(draws.jobLength())));
            assertThat(exact.negated().rounded(graduation))
                    .isEqualTo(exact.rounded(graduation).negated());
        });
    }

    @Test
    void a_half_goes_away_from_zero_on_every_tape() {
        Draws.times(DRAWS, 24, draws -> {
            Graduation graduation = draws.oneOf(GRADUATIONS);
            long line = draws.between(0, 5_000);
            Length half = graduation.step().times(Ratio.of(2 * line + 1, 2));
            assertThat(half.rounded(graduation)).isEqualTo(graduation.step().times(line + 1));
        });
    }

    @Test
    void what_is_already_on_a_line_stays() {
        Draws.times(DRAWS, 25, draws -> {
            Graduation graduation = draws.oneOf(GRADUATIONS);
            Length line = draws.onTape(graduation);
            assertThat(List.of(line.rounded(graduation), line.roundedDown(graduation), line.roundedUp(graduation)))
                    .containsOnly(line);
        });
    }

    @Test
    void rounding_down_and_up_are_the_lines_on_either_side() {
        Draws.times(DRAWS, 26, draws -> {
            Graduation graduation = draws.oneOf(GRADUATIONS);
            Length exact = draws.pitch().sinTimes(draws.jobLength());
            Length down = exact.roundedDown(graduation);
            Length up = exact.roundedUp(graduation);
            assertThat(exact).isGreaterThanOrEqualTo(down).isLessThanOrEqualTo(up);
            assertThat(up.minus(down)).isIn(Length.ZERO, graduation.step());
        });
    }

    /** Against a second way of computing: the root with sixty digits, then rounded as a decimal number. */
    @Test
    void the_rake_of_any_right_triangle_lands_on_the_line_that_sixty_digits_choose() {
        Draws.times(DRAWS, 27, draws -> {
            Ratio rise = Ratio.of(draws.between(1, 20_000), draws.between(1, 64));
            Ratio run = Ratio.of(draws.between(1, 30_000), draws.between(1, 64));
            Length rake = Length.diagonal(Length.inches(rise), Length.inches(run));
            BigDecimal squares = digits(rise).pow(2).add(digits(run).pow(2));
            BigInteger sixteenths = squares.sqrt(SIXTY_DIGITS)
                    .multiply(BigDecimal.valueOf(16))
                    .setScale(0, RoundingMode.HALF_UP)
                    .toBigInteger();
            assertThat(rake.rounded(Graduation.SIXTEENTH_INCH))
                    .isEqualTo(Length.inches(Ratio.of(sixteenths, BigInteger.valueOf(16))));
            assertThat(Pitch.of(Length.inches(rise), Length.inches(run)).alongForLevel(Length.inches(run)))
                    .isEqualTo(rake);
        });
    }

    @Test
    void whole_times_fit_and_one_more_does_not() {
        Draws.times(DRAWS, 28, draws -> {
            Length whole = draws.pitch().alongForLevel(draws.jobLength());
            Length part = draws.onTape(Graduation.SIXTEENTH_INCH).plus(Length.inches(0, 1, 16));
            long times = whole.wholeTimes(part);
            assertThat(part.times(times)).isLessThanOrEqualTo(whole);
            assertThat(part.times(times + 1)).isGreaterThan(whole);
        });
    }

    private static BigDecimal digits(Ratio ratio) {
        return new BigDecimal(ratio.numerator()).divide(new BigDecimal(ratio.denominator()), SIXTY_DIGITS);
    }
}
