package pitchboard.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/** Facts every carpenter knows. Common practice, no source. */
final class TradeFactsTest {
    private static final Length RUN = Length.inches(10);

    private static Stair flush() {
        return OrdinaryJob.ofRise(Length.inches(105)).flush().stair(12, RUN);
    }

    /** Over 11 it is a little over 9 1/2. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 | 8 3/4
            10 | 10 1/2
            """)
    void a_hundred_and_five_inches_over_so_many_risers(int risers, String rise) {
        assertThat(OrdinaryJob.ofRise(Length.inches(105)).stair(risers, RUN).rise())
                .isEqualTo(Read.inches(rise));
    }

    @Test
    void a_hundred_and_five_inches_over_eleven_risers_is_a_little_over_nine_and_a_half() {
        Length rise = OrdinaryJob.ofRise(Length.inches(105)).stair(11, RUN).rise();
        assertThat(rise).isEqualTo(Length.inches(9, 6, 11)).isBetween(Read.inches("9 1/2"), Read.inches("9 9/16"));
    }

    @Test
    void a_ten_inch_run_under_an_eleven_and_a_quarter_tread_leaves_an_inch_and_a_quarter_of_nosing() {
        assertThat(flush().projection()).isEqualTo(Read.inches("1 1/4"));
    }

    @Test
    void with_the_head_flush_there_are_twelve_treads_and_one_down_eleven() {
        assertThat(flush().treads()).isEqualTo(12);
        assertThat(OrdinaryJob.ofRise(Length.inches(105)).stair(12, RUN).treads())
                .isEqualTo(11);
    }

    @Test
    void a_tread_of_an_inch_and_a_half_makes_the_first_cut_seven_and_a_quarter() {
        assertThat(flush().firstCut()).isEqualTo(Read.inches("7 1/4"));
    }

    @Test
    void forty_inch_treads_on_three_stringers_put_the_middle_one_at_twenty() {
        assertThat(StringerSpacing.of(flush().brief()).middles().get(1)).isEqualTo(Length.inches(20));
    }
}
