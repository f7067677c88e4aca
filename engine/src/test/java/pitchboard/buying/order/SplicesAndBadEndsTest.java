package pitchboard.buying.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.buying.need.Need;
import pitchboard.buying.yard.BadEnd;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.Price;
import pitchboard.buying.yard.RackPiece;
import pitchboard.buying.yard.Saw;
import pitchboard.buying.yard.Splicing;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Use;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/** Pieces made of two boards, and boards with an end that is split or stamped. Kerf 1/8, no trim. */
final class SplicesAndBadEndsTest {
    private static final Currency USD = new Currency("USD", 2);
    private static final Length THICK = Length.inches(1, 1, 2);
    private static final Length WIDE = Length.inches(3, 1, 2);
    private static final Splicing HANDRAILS = new Splicing(List.of(Use.HANDRAIL), Length.ZERO);

    private static Yard yard(BadEnd bad, Splicing splicing, List<RackPiece> rack, BoardLength... lengths) {
        Stock stock = new Stock(
                "2x4",
                THICK,
                WIDE,
                new Stock.Wood("", "", ""),
                List.of(),
                Length.ZERO,
                bad,
                Optional.empty(),
                List.of(lengths));
        Saw saw = new Saw(Length.inches(0, 1, 8), Length.ZERO, Length.inches(12));
        return new Yard("yard", "", new Day(2027, 5, 3), USD, Tape.Units.INCHES, saw, splicing, List.of(stock), rack);
    }

    private static BoardLength sold(int feet, String price) {
        Money money = new Money(new BigDecimal(price), USD);
        return new BoardLength(Length.feet(feet), Optional.of(new Price.PerBoard(money)), Optional.empty());
    }

    private static Need need(Use use, int count, Length length, Length... joints) {
        return new Need("HR", "handrail", use, count, THICK, WIDE, length, List.of(joints), Optional.empty());
    }

    private static BuyingList buy(Yard yard, Need... needs) {
        return Buyer.buy(List.of(needs), yard, 100_000);
    }

    /** 200 in from boards of 144 in: of the brackets at 10, 70, 130 and 190 in the one at 70 in leaves 70 and 130. */
    @Test
    void a_rail_too_long_is_joined_over_the_bracket_nearest_its_middle() {
        Need rail = need(
                Use.HANDRAIL,
                1,
                Length.inches(200),
                Length.inches(10),
                Length.inches(70),
                Length.inches(130),
                Length.inches(190));
        BuyingList list = buy(yard(BadEnd.NONE, HANDRAILS, List.of(), sold(12, "9.00")), rail);
        Spliced spliced = list.orders().get(0).spliced().get(0);
        assertThat(spliced.joints()).containsExactly(Length.inches(70));
        assertThat(spliced.parts()).extracting(Need::mark).containsExactly("HR-1", "HR-2");
        assertThat(spliced.parts()).extracting(Need::length).containsExactly(Length.inches(70), Length.inches(130));
        assertThat(list.costSoFar()).hasToString("18.00 USD");
        assertThat(list.isComplete()).isTrue();
    }

    /** Half a lap of 6 in to either side of each of two joints: 103, 106 and 103 of 300 in. */
    @Test
    void a_lap_lengthens_the_parts_and_a_third_part_comes_where_two_do_not_do() {
        Splicing lapped = new Splicing(List.of(Use.HANDRAIL), Length.inches(6));
        Need rail = need(Use.HANDRAIL, 1, Length.inches(300), Length.inches(100), Length.inches(200));
        BuyingList list = buy(yard(BadEnd.NONE, lapped, List.of(), sold(10, "8.00")), rail);
        assertThat(list.orders().get(0).spliced().get(0).parts())
                .extracting(Need::length)
                .containsExactly(Length.inches(103), Length.inches(106), Length.inches(103));
    }

    @Test
    void what_may_not_be_joined_is_not() {
        Length long200 = Length.inches(200);
        Need noSupport = need(Use.HANDRAIL, 1, long200);
        Unmet told = buy(yard(BadEnd.NONE, HANDRAILS, List.of(), sold(12, "9.00")), noSupport)
                .unmet()
                .get(0);
        assertThat(told.advice()).contains("engineer");
        Need notSaid = need(Use.HANDRAIL, 1, long200, Length.inches(100));
        assertThat(buy(yard(BadEnd.NONE, Splicing.NEVER, List.of(), sold(12, "9.00")), notSaid)
                        .unmet()
                        .get(0)
                        .advice())
                .contains("splice: [ handrail ]");
        Need onlyAtTheEnd = need(Use.HANDRAIL, 1, long200, Length.inches(10));
        assertThat(buy(yard(BadEnd.NONE, HANDRAILS, List.of(), sold(12, "9.00")), onlyAtTheEnd)
                        .unmet()
                        .get(0)
                        .advice())
                .contains("support nearer to its middle");
    }

    @Test
    void what_fits_one_board_stays_whole() {
        Need rail = need(Use.HANDRAIL, 1, Length.inches(140), Length.inches(70));
        BuyingList list = buy(yard(BadEnd.NONE, HANDRAILS, List.of(), sold(8, "1.00"), sold(12, "9.00")), rail);
        assertThat(list.orders().get(0).spliced()).isEmpty();
        assertThat(list.costSoFar()).hasToString("9.00 USD");
    }

    /** Two of 47 in and a kerf are 94 1/8: they come off 96 in, but not off 96 less 3 in. */
    @Test
    void a_piece_avoids_the_bad_end() {
        Need rails = need(Use.RAILS, 2, Length.inches(47));
        BoardLength eight = sold(8, "5.00");
        assertThat(buy(yard(BadEnd.NONE, Splicing.NEVER, List.of(), eight), rails)
                        .costSoFar())
                .hasToString("5.00 USD");
        BadEnd bad = new BadEnd(Length.inches(3), List.of());
        BuyingList list = buy(yard(bad, Splicing.NEVER, List.of(), eight), rails);
        assertThat(list.costSoFar()).hasToString("10.00 USD");
        assertThat(list.orders().get(0).boards()).extracting(Board::bad).containsOnly(Length.inches(3));
        BadEnd bears = new BadEnd(Length.inches(3), List.of(Use.RAILS));
        assertThat(buy(yard(bears, Splicing.NEVER, List.of(), eight), rails).costSoFar())
                .hasToString("5.00 USD");
    }

    /** What is left over counts as long as it is sound: of 15 in with 4 in split, 11 are less than the 12 kept. */
    @Test
    void a_piece_of_the_rack_has_a_bad_end_too() {
        RackPiece split = new RackPiece("2x4", Length.inches(60), Length.inches(4), 1, "");
        Need rail = need(Use.RAILS, 1, Length.inches(44, 7, 8));
        BuyingList list = buy(yard(BadEnd.NONE, Splicing.NEVER, List.of(split), sold(8, "5.00")), rail);
        Board board = list.orders().get(0).boards().get(0);
        assertThat(list.costSoFar().isZero()).isTrue();
        assertThat(board.left()).isEqualTo(Length.inches(15));
        assertThat(board.isKept()).isFalse();
        Need longer = need(Use.RAILS, 1, Length.inches(57));
        assertThat(buy(yard(BadEnd.NONE, Splicing.NEVER, List.of(split), sold(8, "5.00")), longer)
                        .costSoFar())
                .hasToString("5.00 USD");
    }
}
