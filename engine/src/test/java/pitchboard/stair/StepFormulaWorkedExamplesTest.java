package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;

/** Pairs of rise and run that books print as checks of their step formulas. All of them close. */
final class StepFormulaWorkedExamplesTest {
    private static Stair step(String rise, String run) {
        return OrdinaryJob.ofRise(Read.inches(rise).times(10)).stair(10, Read.inches(run));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # Hodgson, Stair-Building (1907-1917), rule 2R + T = 24
            PACE    | 8     | 8      | 24
            PACE    | 7 1/2 | 9      | 24
            PACE    | 7     | 10     | 24
            # US Army Engineer subcourse EN5156, rule 1, 2R + T = 25
            PACE    | 7 1/2 | 10     | 25
            PACE    | 6 1/2 | 12     | 25
            # the same, fig. 2-38: the step as rounded there, against its three rules (76.1 printed)
            PACE    | 7 1/4 | 10 1/2 | 25
            SUM     | 7 1/4 | 10 1/2 | 17 3/4
            PRODUCT | 7 1/4 | 10 1/2 | 76 1/8
            # W. H. Wood, Practical Stair Building and Handrailing (1894), plate II: R + G from 16 1/2 to 18, better 17
            SUM     | 7 1/4 | 10 3/4 | 18
            SUM     | 7 1/4 | 9 3/4  | 17
            # Cyclopedia of Architecture, Carpentry and Building, vol. 1, Inside Finish: R x T from 70 to 75; 11 2/3 goes with 6
            PRODUCT | 6     | 12 1/2 | 75
            # drawing textbook, Stairways: house average, R + T 17 to 18 and 2R + T = 24
            PACE    | 7     | 10     | 24
            SUM     | 7     | 10     | 17
            """)
    void a_pair_in_inches_closes(StepFormula formula, String rise, String run, String printed) {
        assertThat(ExactText.mixed(formula.of(step(rise, run)))).isEqualTo(printed);
    }

    /** Cyclopedia of Architecture, Carpentry and Building, vol. 1, Inside Finish: "11 2/3". */
    @Test
    void the_product_of_six_and_eleven_and_two_thirds_is_seventy() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(60)).stair(10, Length.inches(11, 2, 3));
        assertThat(ExactText.mixed(StepFormula.PRODUCT.of(stair))).isEqualTo("70");
        assertThat(StepFormula.PRODUCT.suits(stair)).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # Stairmaking, trainees' handbook (IBE/GTZ), section 5, examples 3 and 2: a + 2s = 630
            172 mm | 286 mm | 630
            171 mm | 288 mm | 630
            # Stairmaking, instruction examples (IBE/GTZ), example 8.4 (sum: own arithmetic)
            180 mm | 270 mm | 630
            # TAFE NSW carpentry teaching slides (Carp 18), slide sets 2811529 (rise rounded to 171) and 4242855
            171 mm | 300 mm | 642
            170 mm | 275 mm | 615
            # own arithmetic on limits: Canada NBC 9.8.4 (200, 255), Australia NCC (190, 240), Germany DIN 18065 (200, 230)
            200 mm | 255 mm | 655
            190 mm | 240 mm | 620
            200 mm | 230 mm | 630
            """)
    void a_pair_in_millimetres_closes(String rise, String run, long printed) {
        Length pace = Length.inches(StepFormula.PACE_METRIC.of(step(rise, run)));
        assertThat(pace).isEqualTo(Length.mm(printed));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # at and on either side of each band
            PACE        | 7 mm      | 10 in     | false
            PACE        | 7 in      | 10 in     | true
            PACE        | 7 in      | 9 15/16   | false
            PACE        | 7 1/2     | 10 in     | true
            PACE        | 7 1/2     | 10 1/16   | false
            PACE_METRIC | 170 mm    | 290 mm    | true
            PACE_METRIC | 170 mm    | 289.9 mm  | false
            PACE_METRIC | 170 mm    | 310 mm    | true
            PACE_METRIC | 170 mm    | 310.1 mm  | false
            SUM         | 7 in      | 10 in     | true
            SUM         | 7 in      | 9 15/16   | false
            SUM         | 7 in      | 12 in     | true
            SUM         | 7 in      | 12 1/16   | false
            PRODUCT     | 7 in      | 10 in     | true
            PRODUCT     | 7 in      | 9 15/16   | false
            PRODUCT     | 7 1/2     | 10 in     | true
            PRODUCT     | 7 1/2     | 10 1/16   | false
            SAFETY      | 170 mm    | 280 mm    | true
            SAFETY      | 170 mm    | 279.9 mm  | false
            SAFETY      | 170 mm    | 300 mm    | true
            SAFETY      | 170 mm    | 300.1 mm  | false
            """)
    void a_step_suits_a_formula_within_its_band_and_at_its_ends(
            StepFormula formula, String rise, String run, boolean suits) {
        assertThat(formula.suits(step(rise, run))).isEqualTo(suits);
    }
}
