package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;

/** How much of the head meets the header. Own arithmetic. */
final class HeadContactWorkedExamplesTest {
    private static final Length RUN = Length.inches(10);

    private static OrdinaryJob job(String headerDepth) {
        return OrdinaryJob.ofRise(Length.inches(105))
                .treads(Length.inches(11), Length.inches(1))
                .header(Read.inches(headerDepth), Length.inches(1));
    }

    private static Length contact(OrdinaryJob job) {
        return new StringerShape(job.stair(14, RUN)).contactHeight();
    }

    /** Header and decking less rise and tread, with the floor as the last step: rise 7 1/2, decking 1, tread 1. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # header | contact
            9 1/4    | 1 3/4
            11 1/4   | 3 3/4
            """)
    void one_rise_down_a_common_header_leaves_little(String header, String contact) {
        assertThat(contact(job(header))).isEqualTo(Read.inches(contact));
    }

    /** The plumb cut of an 11 1/4 in board on this slope is 14 1/16 − 7 1/2 = 6 9/16 high. */
    @Test
    void flush_with_the_floor_the_whole_plumb_cut_meets_it() {
        assertThat(contact(job("9 1/4").flush())).isEqualTo(Read.inches("6 9/16"));
    }

    @Test
    void a_hanger_board_meets_it_with_its_own_height() {
        HeadFixing board = new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(3, 1, 2));
        assertThat(contact(job("9 1/4").flush().head(board))).isEqualTo(Read.inches("3 1/2"));
        assertThat(contact(job("9 1/4").head(board))).isEqualTo(Read.inches("1 3/4"));
    }

    /** Its underside is level with the end of the plumb cut, 1 + 6 9/16 below the floor. */
    @Test
    void a_ledger_meets_it_as_far_as_the_header_reaches_down() {
        HeadFixing ledger = new HeadFixing.Ledger(Length.inches(1, 1, 2), Length.inches(3, 1, 2));
        assertThat(contact(job("9 1/4").flush().head(ledger))).isEqualTo(Read.inches("3 1/2"));
        assertThat(contact(job("5 1/2").flush().head(ledger))).isEqualTo(Read.inches("2 7/16"));
    }
}
