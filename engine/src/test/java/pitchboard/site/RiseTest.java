package pitchboard.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Length;

/** Ground read down from a level line: 100 in at the edge, 106 in at five feet, 104 in at ten. */
final class RiseTest {
    private static final Rise GROUND = levelLine(reading(0, 100), reading(60, 106), reading(120, 104));

    private static Rise levelLine(Rise.Reading... readings) {
        return new Rise.FromLevelLine(List.of(readings), Certainty.MEASURED);
    }

    private static Rise.Reading reading(long distance, long drop) {
        return new Rise.Reading(Length.inches(distance), Length.inches(drop));
    }

    @Test
    void at_a_reading_the_rise_is_the_reading() {
        assertThat(GROUND.at(Length.ZERO)).isEqualTo(Length.inches(100));
        assertThat(GROUND.at(Length.inches(60))).isEqualTo(Length.inches(106));
        assertThat(GROUND.at(Length.inches(120))).isEqualTo(Length.inches(104));
    }

    @Test
    void between_two_readings_the_ground_is_straight() {
        assertThat(GROUND.at(Length.inches(15))).isEqualTo(Length.inches(101, 1, 2));
        assertThat(GROUND.at(Length.inches(90))).isEqualTo(Length.inches(105));
    }

    @Test
    void beyond_the_last_reading_it_goes_on_as_between_the_last_two() {
        assertThat(GROUND.at(Length.inches(150))).isEqualTo(Length.inches(103));
    }

    @Test
    void before_the_first_reading_it_comes_as_between_the_first_two() {
        Rise fromAfar = levelLine(reading(40, 100), reading(100, 106));
        assertThat(fromAfar.at(Length.ZERO)).isEqualTo(Length.inches(96));
    }

    @Test
    void it_bends_at_the_readings_between_its_ends() {
        assertThat(GROUND.bends()).containsExactly(Length.inches(60));
        assertThat(levelLine(reading(0, 100), reading(60, 106)).bends()).isEmpty();
    }

    @Test
    void one_rise_for_all_landing_points_has_no_bends() {
        Rise level = new Rise.AtLanding(Measured.sure(Length.inches(105)));
        assertThat(level.at(Length.inches(500))).isEqualTo(Length.inches(105));
        assertThat(level.bends()).isEmpty();
    }

    @Test
    void one_reading_is_no_line_and_readings_move_away_from_the_head() {
        assertThatIllegalArgumentException().isThrownBy(() -> levelLine(reading(0, 100)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> levelLine(reading(0, 100), reading(60, 101), reading(60, 102)))
                .withMessageContaining("reading 3");
    }
}
