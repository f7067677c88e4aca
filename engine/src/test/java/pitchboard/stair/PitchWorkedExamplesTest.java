package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.measure.Angle;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;

/** How steep stairs at the limits of published rules are. Own arithmetic, to the place given. */
final class PitchWorkedExamplesTest {
    private static Pitch pitch(String rise, String run) {
        return Pitch.of(Read.mm(rise), Read.mm(run));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # International Residential Code, R311.7.5: the steepest stair
            7 3/4 in | 10 in    | 37.8
            # amended locally to 8 1/4 over 9
            8 1/4 in | 9 in     | 42.5
            # Approved Document K (England) 2013, table 1.1: both figures inside the table
            220      | 220      | 45.0
            # National Building Code of Canada, 9.8.4: private stair
            200      | 255      | 38.1
            # Australia NCC 2022 / ABCB Housing Provisions, part 11
            190      | 240      | 38.4
            # DIN 18065: house
            200      | 230      | 41.0
            # New Zealand D1/AS1, table 6: main private
            190      | 280      | 34.2
            # 29 CFR 1910.25
            9 1/2 in | 9 1/2 in | 45.0
            # too flat for 29 CFR 1910.25 and 1926.1052 (30 degrees)
            6 in     | 12 in    | 26.6
            # a 3-4-5 stair
            7 1/2 in | 10 in    | 36.9
            7 1/2 in | 11 in    | 34.3
            """)
    void its_degrees_to_one_place(String rise, String run, double degrees) {
        assertThat(pitch(rise, run).degrees()).isCloseTo(degrees, within(0.05));
    }

    /** Approved Document K (England) 2013, table 1.1 note 1: private stairs at most 42 degrees. */
    @Test
    void least_run_and_greatest_rise_at_42_degrees() {
        Angle limit = Angle.degrees(42);
        assertThat(pitch("220", "245").compareTo(limit)).isNegative();
        assertThat(pitch("220", "244").compareTo(limit)).isPositive();
        assertThat(pitch("198", "220").compareTo(limit)).isNegative();
        assertThat(pitch("199", "220").compareTo(limit)).isPositive();
    }

    @Test
    void three_four_five_steps_along_the_edge_without_a_fraction() {
        assertThat(pitch("7 1/2 in", "10 in").alongForLevel(Length.inches(10))).isEqualTo(Length.inches(12, 1, 2));
    }
}
