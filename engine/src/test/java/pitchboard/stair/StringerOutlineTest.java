package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;

/**
 * Whole outlines on a slope of 3 in 4, where every length is a plain fraction: rise 7 1/2, run 10, so that the 11 1/4 in
 * board is 14 1/16 deep plumb. Worked by hand.
 */
final class StringerOutlineTest {
    private static final Length RUN = Length.inches(10);

    private static OrdinaryJob threeRisers() {
        return OrdinaryJob.ofRise(Length.inches(22, 1, 2));
    }

    private static String outline(OrdinaryJob job, int risers) {
        Stair stair = job.stair(risers, RUN);
        assertThat(new Buildable().objections(stair)).isEmpty();
        return text(new StringerShape(stair).outline());
    }

    private static String text(Outline outline) {
        return outline.corners().stream()
                .map(corner -> inches(corner.x()) + "," + inches(corner.y()))
                .collect(Collectors.joining("  "));
    }

    private static String inches(Length length) {
        return ExactText.mixed(length.inInches());
    }

    @Test
    void bolted_to_the_header_and_standing_on_the_surface() {
        assertThat(outline(threeRisers(), 3)).isEqualTo("0,0  0,6  10,6  10,13 1/2  20,13 1/2  20,6 15/16  10 3/4,0");
    }

    @Test
    void on_a_sole_board_only_the_foot_changes() {
        OrdinaryJob job = threeRisers().foot(new FootDetail.SoleBoard(Length.inches(1, 1, 2), Length.inches(6)));
        assertThat(outline(job, 3)).isEqualTo("0,1 1/2  0,6  10,6  10,13 1/2  20,13 1/2  20,6 15/16  12 3/4,1 1/2");
    }

    @Test
    void a_kicker_is_let_into_the_toe() {
        OrdinaryJob job = threeRisers().foot(new FootDetail.Kicker(Length.inches(1, 1, 2), Length.inches(3, 1, 2)));
        assertThat(outline(job, 3))
                .isEqualTo("3 1/2,0  3 1/2,1 1/2  0,1 1/2  0,6  10,6  10,13 1/2  20,13 1/2  20,6 15/16  10 3/4,0");
    }

    @Test
    void a_hanger_board_lower_than_the_plumb_cut_leaves_the_wood_under_it() {
        OrdinaryJob job = threeRisers().head(new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(5)));
        assertThat(outline(job, 3))
                .isEqualTo("0,0  0,6  10,6  10,13 1/2  18 1/2,13 1/2  18 1/2,8 1/2  20,8 1/2  20,6 15/16  10 3/4,0");
    }

    /** Seen from the header the plumb cut is 6 9/16 high: a board as high as that takes all of it. */
    @Test
    void a_hanger_board_as_high_as_the_plumb_cut_moves_the_whole_cut_back() {
        OrdinaryJob job =
                threeRisers().head(new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(6, 9, 16)));
        assertThat(outline(job, 3)).isEqualTo("0,0  0,6  10,6  10,13 1/2  18 1/2,13 1/2  18 1/2,5 13/16  10 3/4,0");
    }

    @Test
    void a_ledger_is_notched_out_from_below() {
        OrdinaryJob job = threeRisers().head(new HeadFixing.Ledger(Length.inches(2), Length.inches(3)));
        assertThat(outline(job, 3))
                .isEqualTo("0,0  0,6  10,6  10,13 1/2  20,13 1/2  20,9 15/16  18,9 15/16  18,5 7/16  10 3/4,0");
    }

    @Test
    void a_single_flush_riser_is_a_block() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(7, 1, 2)).flush();
        assertThat(outline(job, 1)).isEqualTo("0,0  0,6  10,6  10,0");
    }

    @Test
    void two_risers_with_the_floor_as_the_second_are_the_same_block() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(15));
        assertThat(outline(job, 2)).isEqualTo("0,0  0,6  10,6  10,0");
    }

    @Test
    void in_a_flight_lower_than_the_board_is_deep_the_hanger_board_stands_on_what_is_left() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(15))
                .head(new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(6)));
        assertThat(outline(job, 2)).isEqualTo("0,0  0,6  8 1/2,6  8 1/2,0");
    }

    @Test
    void in_a_flight_lower_than_the_board_is_deep_a_ledger_stands_at_the_seat() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(15))
                .header(Length.inches(20), Length.inches(1))
                .head(new HeadFixing.Ledger(Length.inches(2), Length.inches(3)));
        assertThat(outline(job, 2)).isEqualTo("0,0  0,6  10,6  10,3  8,3  8,0");
    }

    /** The toe hangs 8 in lower until the finish is laid; the first cut is higher than a rise. */
    @Test
    void a_finish_still_to_come_lets_the_foot_down() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(26, 1, 2)).finishes(Length.ZERO, Length.inches(4));
        assertThat(outline(job, 3)).isEqualTo("0,-4  0,6  10,6  10,13 1/2  20,13 1/2  20,6 15/16  5 5/12,-4");
    }
}
