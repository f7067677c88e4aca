package pitchboard.strength.elements.throat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.strength.elements.Boards;
import pitchboard.strength.elements.EdgeLoad;
import pitchboard.strength.elements.Effort;
import pitchboard.strength.elements.Elements;
import pitchboard.strength.elements.Orthotropic;
import pitchboard.strength.elements.PlateAnswer;

final class CompactRuleTest {
    /** The eleven boards the rule was found on. What is left between rule and elements is under one twentieth. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # rise, run, steps, depth, ET/EL, GLT/EL, nu, thickness
            7.5,  10, 10, 11.25,  0.050, 0.078, 0.449, 1.5
            7.5,  10, 10, 11.25,  0.068, 0.064, 0.292, 1.5
            7,    11, 10, 11.25,  0.050, 0.078, 0.449, 1.5
            7.75, 10, 10, 11.25,  0.050, 0.078, 0.449, 1.5
            8,     9, 10, 11.25,  0.050, 0.078, 0.449, 1.5
            6.5,  12, 10, 11.25,  0.050, 0.078, 0.449, 1.5
            7.5,  10,  5, 11.25,  0.050, 0.078, 0.449, 1.5
            7.5,  10, 14, 11.25,  0.050, 0.078, 0.449, 1.5
            7.5,  10, 10,  9.25,  0.050, 0.078, 0.449, 1.5
            7.5,  10, 10, 13.25,  0.050, 0.078, 0.449, 1.5
            7.5,  10, 10, 11.875, 0.050, 0.078, 0.449, 1.75
            """)
    void it_says_what_the_finite_elements_say(
            double rise,
            double run,
            int steps,
            double depth,
            double across,
            double shear,
            double poisson,
            double thickness) {
        Boards.Stringer board = new Boards.Stringer(rise, run, steps, depth);
        Orthotropic wood = Boards.ratios(across, shear, poisson);
        for (List<EdgeLoad> loads : List.of(List.of(board.point((steps - 1) / 2)), board.everyTread())) {
            PlateAnswer.Solved elements = (PlateAnswer.Solved)
                    Elements.solve(board.plate(wood, thickness, loads), Effort.quick(depth * Boards.INCH));
            SlopedBeam throat = board.beam(board.throat(), wood, thickness, loads);
            double instant = CompactRule.beam(tooth(rise, run, depth, steps), throat)
                    .orElseThrow()
                    .fallMm();
            assertThat(instant / elements.fallMm().value()).isCloseTo(1, within(0.05));
        }
    }

    @Test
    void where_it_was_never_tried_it_cannot_tell_and_says_why() {
        SawTooth odd = tooth(9, 13, 7.25, 20);
        assertThat(CompactRule.outside(odd)).hasSize(4);
        SlopedBeam any = new SlopedBeam(2000, 0.8, 100, 38, 11000, 690, List.of());
        assertThat(CompactRule.beam(odd, any)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            6.5,  9,  9.25,   5, 0
            8,   12, 13.25,  14, 0
            6.4,  9,  9.25,   5, 1
            8.1, 12, 13.25,  14, 1
            8,   12.1, 13.25, 14, 1
            8,   12, 13.3,   14, 1
            8,   12, 13.25,  15, 1
            6.5,  9,  9.25,   4, 1
            """)
    void the_edges_of_what_was_tried_belong_to_it(double rise, double run, double depth, int teeth, int reasons) {
        assertThat(CompactRule.outside(tooth(rise, run, depth, teeth))).hasSize(reasons);
    }

    private static SawTooth tooth(double rise, double run, double depth, int teeth) {
        return new SawTooth(run * Boards.INCH, rise * Boards.INCH, depth * Boards.INCH, teeth);
    }
}
