package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.site.Rise;

/**
 * How to Build Ramps for Home Accessibility (Minnesota), p. 57, long-tread steps: 30 in at 4 in a step makes 7.5, so 8
 * risers of 3 3/4 and 7 treads of 34; then carry a level line out to that point, measure the drop there, and count again
 * if it differs. We go on until it no longer does.
 */
final class SlopingGroundWorkedExamplesTest {
    private static final Length TREAD = Length.inches(34);
    private static final Length WANTED = Length.inches(4);

    private static Rise.Reading reading(long distance, Length drop) {
        return new Rise.Reading(Length.inches(distance), drop);
    }

    private static OrdinaryJob job(Rise.Reading... readings) {
        return OrdinaryJob.ofRise(Length.ZERO)
                .levelLine(readings)
                .treads(Length.inches(35), Length.inches(1))
                .runFixed(TREAD);
    }

    @Test
    void on_level_ground_the_first_count_stands() {
        Flight flight = job(reading(0, Length.inches(30)), reading(300, Length.inches(30)))
                .stair(8, TREAD)
                .flight();
        assertThat(flight.rise()).isEqualTo(Read.inches("3 3/4"));
        assertThat(flight.treads()).isEqualTo(7);
        assertThat(flight.totalRun()).isEqualTo(Read.inches("19'-10\""));
    }

    /** The fall over 25 feet, below zero where the ground climbs away; two of them change the count. */
    @ParameterizedTest
    @ValueSource(strings = {"0", "1", "5", "9 3/8", "-6"})
    void measuring_again_until_nothing_changes_ends_at_our_stair(String fall) {
        Length edge = Length.inches(30);
        OrdinaryJob job = job(reading(0, edge), reading(300, edge.plus(Read.inches(fall))));
        int risers = 0;
        Length drop = edge;
        for (int count = count(drop); count != risers; count = count(drop)) {
            risers = count;
            drop = job.site().totalRise(TREAD.times(risers - 1L));
        }
        Flight direct = job.stair(risers, TREAD).flight();
        assertThat(direct.totalRise()).isEqualTo(drop);
        assertThat(direct.rise()).isLessThanOrEqualTo(WANTED);
        assertThat(job.risersFixed(risers).choices(Gate.OPEN).allowed())
                .extracting(option -> option.stair().flight())
                .containsExactly(direct);
    }

    /** Taken up to the next whole number, as the book does. */
    private static int count(Length drop) {
        return Math.toIntExact(-drop.negated().wholeTimes(WANTED));
    }
}
