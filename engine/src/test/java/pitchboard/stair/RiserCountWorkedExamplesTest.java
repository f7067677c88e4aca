package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/** Books turn a quotient into a number of risers in three ways; the solver offers what each arrives at. */
final class RiserCountWorkedExamplesTest {
    private enum Rounding {
        DOWN,
        NEAREST,
        UP;

        int of(Ratio quotient) {
            BigInteger whole = switch (this) {
                case DOWN -> quotient.floor();
                case NEAREST -> quotient.nearest();
                case UP -> quotient.negated().floor().negate();
            };
            return whole.intValueExact();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # NAVEDTRA 14044, Builder 3 & 2, Volume 2, chapter 6, Stairway Layout: 15.29
            107 in  | 7 in   | DOWN    | 15
            # US Army Engineer subcourse EN5156, pp 2-27 to 2-29: 13.43
            94 in   | 7 in   | NEAREST | 13
            # Basic Carpentry Techniques (open online text, British Columbia), Stairs, fig. 44A: 11.67
            2100 mm | 180 mm | NEAREST | 12
            # TAFE NSW carpentry teaching slides (Carp 18), slide set 2811529: 14.117
            2400 mm | 170 mm | NEAREST | 14
            # the same, slide set 4242855: 5.31
            850 mm  | 160 mm | NEAREST | 5
            # Canadian Wood-Frame House Construction (CMHC), Stairway design, near fig. 141: 14.8
            2718 mm | 184 mm | UP      | 15
            # How to Build Ramps for Home Accessibility (Minnesota), p. 57: 7.5
            30 in   | 4 in   | UP      | 8
            # Stairmaking, trainees' handbook (IBE/GTZ), section 5, example 4: 10.29
            1750 mm | 170 mm | UP      | 11
            """)
    void the_count_a_book_arrives_at_is_offered_with_its_neighbours(
            String rise, String wanted, Rounding rounding, int risers) {
        Length total = Read.inches(rise);
        assertThat(rounding.of(total.over(Read.inches(wanted)))).isEqualTo(risers);
        Choices choices = OrdinaryJob.ofRise(total).choices(Gate.OPEN);
        assertThat(choices.bestOfEachCount())
                .extracting(option -> option.stair().flight().risers())
                .contains(risers - 1, risers, risers + 1);
    }

    /** US carpentry trade book reproduced without its title page: 109 / 7 = 15.57; 15 taken, 16 judged too shallow. */
    @Test
    void a_count_that_was_judged_and_the_one_passed_over_are_both_offered() {
        Choices choices = OrdinaryJob.ofRise(Length.inches(109)).choices(Gate.OPEN);
        assertThat(choices.withRisers(15)).isNotEmpty();
        assertThat(choices.withRisers(16)).isNotEmpty();
    }

    /** Own arithmetic: with a legal maximum of 7 in, 107 in over the 15 risers of the first rule rise 7 2/15. */
    @Test
    void only_rounding_up_keeps_to_a_greatest_rise() {
        Ratio quotient = Length.inches(107).over(Length.inches(7));
        assertThat(Length.inches(107).dividedBy(Rounding.DOWN.of(quotient))).isGreaterThan(Length.inches(7));
        assertThat(Length.inches(107).dividedBy(Rounding.NEAREST.of(quotient))).isGreaterThan(Length.inches(7));
        assertThat(Length.inches(107).dividedBy(Rounding.UP.of(quotient))).isLessThan(Length.inches(7));
    }
}
