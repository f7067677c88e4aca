package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.brief.FootDetail;
import pitchboard.measure.Length;

/** Finishes, first cut and last rise: where most site stairs go wrong. */
final class EndRisersWorkedExamplesTest {
    /** Stairmaking, trainees' handbook (IBE/GTZ): a landing 1410 high, 24 of finish on it, 40 of finish below. */
    @Test
    void the_height_of_a_flight_to_a_landing_adds_the_upper_finish_and_takes_off_the_lower() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.mm(1410)).finishes(Length.mm(24), Length.mm(40));
        assertThat(job.site().totalRise(Length.ZERO)).isEqualTo(Length.mm(1394));
    }

    /**
     * NAVEDTRA 14044, Builder 3 & 2, Volume 2, chapter 6: the same finish at both ends changes nothing, a finish above a
     * finished slab is added, different finishes add their difference. The lengths are ours.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # upper finish | lower finish | what is added to the measured rise
            3/4            | 3/4          | 0
            3/4            | 0            | 3/4
            3/4            | 3/8          | 3/8
            3/8            | 3/4          | -3/8
            """)
    void finishes_add_their_signed_difference(String upper, String lower, String added) {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(105)).finishes(Read.inches(upper), Read.inches(lower));
        assertThat(job.site().totalRise(Length.ZERO))
                .isEqualTo(Length.inches(105).plus(Read.inches(added)));
    }

    /** C. A. King, Inside Finishing (1912), arts. 45-46: room, lath and plaster, joist, floor. */
    @Test
    void a_total_rise_is_the_sum_of_the_floor_above() {
        Length sum = Read.inches("8'-0\"").plus(Read.inches("3/4")).plus(Length.inches(8));
        OrdinaryJob job = OrdinaryJob.ofRise(sum).finishes(Read.inches("7/8"), Length.ZERO);
        assertThat(job.stair(14, Length.inches(10)).flight().totalRise()).isEqualTo(Read.inches("105 5/8"));
    }

    /** Carpenters' Guide, Stairs: the foot is cut shorter by the thickness of a tread. */
    @Test
    void the_foot_is_dropped_by_one_tread() {
        for (String thickness : new String[] {"3/4", "1", "1 1/8", "1 1/2"}) {
            Stair stair = OrdinaryJob.ofRise(Length.inches(105))
                    .treads(Length.inches(12), Read.inches(thickness))
                    .stair(15, Length.inches(10));
            assertThat(stair.rise().minus(stair.firstCut())).isEqualTo(Read.inches(thickness));
        }
    }

    /** Own arithmetic: r − t + finish still to come, where the stringer stands on the rough floor. */
    @Test
    void the_first_cut_bridges_a_finish_still_to_come() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105, 3, 4))
                .finishes(Length.ZERO, Length.inches(0, 3, 4))
                .stair(14, Length.inches(10));
        assertThat(stair.firstCut()).isEqualTo(Read.inches("6 3/4"));
    }

    /** Own arithmetic: from the last tread to the rough floor above it is one rise less the finish to come there. */
    @Test
    void the_last_riser_is_short_by_the_finish_above_until_it_is_laid() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(104, 1, 4))
                .finishes(Length.inches(0, 3, 4), Length.ZERO)
                .stair(14, Length.inches(10));
        Length roughFloor = Length.inches(104, 1, 4);
        assertThat(roughFloor.minus(stair.nosing(13).y()))
                .isEqualTo(stair.rise().minus(Length.inches(0, 3, 4)));
    }

    /** Own arithmetic on the rise limit of the International Residential Code, R311.7.5.1: 7 3/4 in, treads of 1 1/2. */
    @Test
    void between_open_treads_stays_a_rise_less_a_tread() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(108, 1, 2)).stair(14, Length.inches(10));
        assertThat(stair.rise()).isEqualTo(Read.inches("7 3/4"));
        assertThat(stair.openingBetweenTreads()).isEqualTo(Read.inches("6 1/4"));
    }

    @Test
    void a_sole_board_takes_its_thickness_off_the_first_cut_again() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105))
                .foot(new FootDetail.SoleBoard(Length.inches(1, 1, 2), Length.inches(6)))
                .stair(14, Length.inches(10));
        assertThat(stair.firstCut()).isEqualTo(Read.inches("4 1/2"));
    }
}
