package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** The pieces of a stair of fourteen risers of 7 1/2 in and runs of 10, on three stringers, 40 in wide. */
final class PartMakerTest {
    private static OrdinaryJob job() {
        return OrdinaryJob.ofRise(Length.inches(105));
    }

    /** As mark, count, name, thickness, width and length; the stringer's board is a matter of its layout. */
    private static List<String> parts(OrdinaryJob job) {
        return PartMaker.partsOf(job.stair(14, Length.inches(10))).stream()
                .filter(part -> !part.id().equals(PartId.STRINGER))
                .map(part -> part.id().mark() + " " + part.count() + " " + part.name() + " " + inches(part.thickness())
                        + " x " + inches(part.width()) + " x " + inches(part.length()))
                .toList();
    }

    private static String inches(Length length) {
        return ExactText.write(length, Tape.Units.INCHES).replace(" in", "");
    }

    @Test
    void bolted_open_and_on_the_surface_it_needs_only_treads_and_a_pitch_board() {
        assertThat(parts(job())).containsExactly("P 1 pitch board 3/8 x 7 1/2 x 10", "T 13 tread 1 1/2 x 11 1/4 x 40");
    }

    @Test
    void a_board_at_head_and_foot_is_as_long_as_the_stringers_are_apart() {
        OrdinaryJob job = job().width(Length.inches(40), 3, Length.inches(1))
                .head(new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(5, 1, 2)))
                .foot(new FootDetail.SoleBoard(Length.inches(1, 1, 2), Length.inches(7, 1, 4)));
        assertThat(parts(job)).endsWith("H 1 hanger board 1 1/2 x 5 1/2 x 38", "F 1 sole board 1 1/2 x 7 1/4 x 38");
    }

    @Test
    void ledger_and_kicker() {
        OrdinaryJob job = job().head(new HeadFixing.Ledger(Length.inches(1, 1, 2), Length.inches(3, 1, 2)))
                .foot(new FootDetail.Kicker(Length.inches(1, 1, 2), Length.inches(3, 1, 2)));
        assertThat(parts(job)).endsWith("H 1 ledger 1 1/2 x 3 1/2 x 40", "F 1 kicker board 1 1/2 x 3 1/2 x 40");
    }

    /** The first closes 7 1/2 less the tread; the last 7 1/2 and the tread less 1 in of decking; the rest a whole rise. */
    @Test
    void riser_boards_stand_on_the_level_cuts() {
        assertThat(parts(job().riserBoards(Length.inches(0, 3, 4))))
                .contains(
                        "RB 1 bottom riser board 3/4 x 6 x 40",
                        "R 12 riser board 3/4 x 7 1/2 x 40",
                        "RT 1 top riser board 3/4 x 8 x 40");
    }

    @Test
    void with_a_finish_still_to_come_the_bottom_riser_board_reaches_down_to_the_present_floor() {
        OrdinaryJob job = OrdinaryJob.ofRise(Length.inches(106))
                .finishes(Length.ZERO, Length.inches(1))
                .riserBoards(Length.inches(0, 3, 4));
        assertThat(parts(job)).contains("RB 1 bottom riser board 3/4 x 7 x 40");
    }

    @Test
    void flush_with_the_floor_a_strip_fills_the_place_of_the_riser_board_behind_the_top_tread() {
        assertThat(parts(job().flush().riserBoards(Length.inches(0, 3, 4))))
                .contains("R 13 riser board 3/4 x 7 1/2 x 40", "RS 1 back strip 3/4 x 1 1/2 x 40")
                .noneMatch(part -> part.startsWith("RT"));
    }

    /** Laid out from below: floor, first board, every board on its level cut, the decking. */
    @Test
    void riser_boards_close_the_whole_height() {
        Length sum = PartMaker.partsOf(job().riserBoards(Length.inches(0, 3, 4)).stair(14, Length.inches(10))).stream()
                .filter(part -> part.id().mark().startsWith("R"))
                .map(part -> part.width().times(part.count()))
                .reduce(Length.ZERO, Length::plus);
        assertThat(sum).isEqualTo(Length.inches(104));
    }
}
