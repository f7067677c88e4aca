package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** Every objection of wood and space, on the slope of 3 in 4: fourteen risers of 7 1/2, runs of 10. */
final class BuildableTest {
    private static final Length RUN = Length.inches(10);

    private static OrdinaryJob job() {
        return OrdinaryJob.ofRise(Length.inches(105));
    }

    private static List<String> against(OrdinaryJob job) {
        return against(job.stair(14, RUN));
    }

    private static List<String> against(Stair stair) {
        return new Buildable()
                .objections(stair).stream()
                        .map(objection -> objection.id() + ": " + objection.what() + " "
                                + inches((Length) objection.measured()) + ", " + inches((Length) objection.limit()))
                        .toList();
    }

    private static String inches(Length length) {
        return ExactText.write(length, Tape.Units.INCHES);
    }

    @Test
    void nothing_is_against_an_ordinary_stair() {
        assertThat(against(job())).isEmpty();
    }

    @Test
    void the_space_may_be_filled_but_not_exceeded() {
        Length taken = Length.inches(131, 1, 4);
        assertThat(against(job().space(taken))).isEmpty();
        assertThat(against(job().space(Length.inches(131))))
                .containsExactly("space: level space taken, header to first nosing 131 1/4 in, 131 in");
    }

    @Test
    void space_smaller_than_one_tread_is_an_objection_and_no_accident() {
        assertThat(against(job().space(Length.inches(4))))
                .containsExactly("space: level space taken, header to first nosing 131 1/4 in, 4 in");
    }

    @Test
    void a_tread_as_wide_as_the_run_has_no_nosing_and_a_narrower_one_leaves_a_gap() {
        assertThat(against(job().treads(RUN, Length.inches(1)))).isEmpty();
        assertThat(against(job().treads(Length.inches(9, 1, 4), Length.inches(1))))
                .containsExactly("tread-covers-run: width of a tread 9 1/4 in, 10 in");
    }

    @Test
    void a_tread_as_thick_as_the_rise_leaves_no_step() {
        assertThat(against(job().treads(Length.inches(12), Length.inches(7, 1, 2))))
                .containsExactly(
                        "treads-clear: thickness of a tread 7 1/2 in, 7 1/2 in",
                        "first-cut: tread and boards at the foot, together 7 1/2 in, 7 1/2 in");
    }

    /** Three of 1 1/2 in in 5 in between the overhangs stand tight; in 4 in they do not stand at all. */
    @Test
    void stringers_need_room_between_the_overhangs() {
        assertThat(against(job().width(Length.inches(40), 3, Length.inches(17, 1, 2))))
                .isEmpty();
        assertThat(against(job().width(Length.inches(40), 3, Length.inches(18))))
                .containsExactly("stringers-fit: thickness of all stringers together 4 1/2 in, 4 in");
    }

    /** The notch is 7 1/2 × 10 ÷ 12 1/2 = 6 in deep. */
    @Test
    void a_throat_of_exactly_nothing_is_no_throat_and_no_end_is_looked_at() {
        assertThat(against(job().stock(Length.inches(6)).foot(new FootDetail.Kicker(Length.inches(9), RUN))))
                .containsExactly("wood-left: depth cut out of the stringer 6 in, 6 in");
    }

    @Test
    void the_first_cut_must_be_higher_than_the_kicker() {
        FootDetail kicker = new FootDetail.Kicker(Length.inches(6), Length.inches(3));
        assertThat(against(job().foot(kicker)))
                .containsExactly("first-cut: tread and boards at the foot, together 7 1/2 in, 7 1/2 in");
    }

    @Test
    void a_sole_board_that_takes_the_whole_first_cut_is_too_thick() {
        FootDetail sole = new FootDetail.SoleBoard(Length.inches(6), Length.inches(6));
        assertThat(against(job().foot(sole)))
                .containsExactly("first-cut: tread and boards at the foot, together 7 1/2 in, 7 1/2 in");
    }

    /** The level cut on the surface is 10 3/4 long. */
    @Test
    void a_kicker_longer_than_the_level_cut_does_not_fit() {
        FootDetail kicker = new FootDetail.Kicker(Length.inches(1), Length.inches(10, 3, 4));
        assertThat(against(job().foot(kicker)))
                .containsExactly("kicker-fits: length of the level cut at the foot 10 3/4 in, 10 3/4 in");
    }

    /** First cut 7 1/2 − 1 1/2 + 8 1/16 = 14 1/16, as high as the board is deep plumb. */
    @Test
    void with_a_finish_higher_than_the_first_cut_can_bridge_the_board_does_not_reach_its_seat() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(113, 1, 16)).finishes(Length.ZERO, Length.inches(8, 1, 16));
        assertThat(against(job))
                .containsExactly("foot-reaches: plumb depth of the stringer's board 14 1/16 in, 14 1/16 in");
    }

    /** The head's top lies one rise and one tread below the floor: 9 in. */
    @Test
    void a_shallow_header_ends_above_the_head() {
        assertThat(against(job().header(Length.inches(8, 1, 4), Length.inches(1))))
                .isEmpty();
        assertThat(against(job().header(Length.inches(8), Length.inches(1))))
                .containsExactly("head-meets-header: from the finished floor down to what carries the head 9 in, 9 in");
    }

    /** The plumb cut ends 9 + 6 9/16 below the floor; a ledger at its foot needs the header to come down to it. */
    @Test
    void a_ledger_needs_the_header_behind_it() {
        HeadFixing ledger = new HeadFixing.Ledger(Length.inches(1, 1, 2), Length.inches(3, 1, 2));
        assertThat(against(job().head(ledger))).isEmpty();
        assertThat(against(job().head(ledger).header(Length.inches(9, 1, 4), Length.inches(1))))
                .containsExactly(
                        "head-meets-header: from the finished floor down to what carries the head 12 1/16 in, 10 1/4 in");
    }

    @Test
    void a_ledger_as_high_as_the_plumb_cut_leaves_nothing_to_sit_on_it() {
        HeadFixing ledger = new HeadFixing.Ledger(Length.inches(1, 1, 2), Length.inches(6, 9, 16));
        assertThat(against(job().head(ledger)))
                .containsExactly("ledger-fits: height of the ledger 6 9/16 in, 6 9/16 in");
    }

    @Test
    void a_board_let_into_the_head_must_be_thinner_than_the_last_step_is_long() {
        assertThat(against(job().head(new HeadFixing.HangerBoard(RUN, Length.inches(5)))))
                .containsExactly("head-notch: thickness of the board let into the head 10 in, 10 in");
    }

    /** Under thick decking the hanger board can end above the header's top. */
    @Test
    void a_hanger_board_that_only_meets_the_decking_holds_nothing() {
        OrdinaryJob flush = job().flush()
                .header(Length.inches(9, 1, 4), Length.inches(3))
                .head(new HeadFixing.HangerBoard(Length.inches(1), Length.inches(1, 1, 2)));
        assertThat(against(flush.stair(14, RUN)))
                .containsExactly(
                        "head-above-header: from the finished floor down to the underside of what carries the head 3 in, 3 in");
    }

    @Test
    void a_hanger_board_higher_than_the_flight_would_stand_in_the_ground() {
        OrdinaryJob low = OrdinaryJob.ofRise(Length.inches(15))
                .head(new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(7, 1, 4)));
        assertThat(against(low.stair(2, RUN)))
                .containsExactly("hanger-fits: height of the hanger board 7 1/4 in, 6 in");
    }
}
