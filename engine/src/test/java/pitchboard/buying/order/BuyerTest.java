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

/** Orders small enough to be worked by hand. Boards of 8, 10 and 16 ft, half an inch trimmed off both ends. */
final class BuyerTest {
    private static final Currency USD = new Currency("USD", 2);
    private static final Length THICK = Length.inches(1, 1, 2);
    private static final Length WIDE = Length.inches(11, 1, 4);
    private static final Saw SAW = new Saw(Length.inches(0, 1, 8), Length.inches(0, 1, 2), Length.inches(12));

    private static Optional<Price> usd(String amount) {
        return Optional.of(new Price.PerBoard(new Money(new BigDecimal(amount), USD)));
    }

    private static BoardLength sold(int feet, String price) {
        return new BoardLength(Length.feet(feet), usd(price), Optional.empty());
    }

    private static Stock stock(String name, Length width, List<Use> uses, BoardLength... lengths) {
        return new Stock(
                name,
                THICK,
                width,
                new Stock.Wood("fir", "", ""),
                uses,
                Length.ZERO,
                BadEnd.NONE,
                Optional.empty(),
                List.of(lengths));
    }

    private static Yard yard(List<RackPiece> rack, Stock... stocks) {
        Day day = new Day(2027, 5, 3);
        return new Yard("yard", "", day, USD, Tape.Units.INCHES, SAW, Splicing.NEVER, List.of(stocks), rack);
    }

    private static Need need(String mark, Use use, int count, Length length) {
        return new Need(mark, "piece", use, count, THICK, WIDE, length, List.of(), Optional.empty());
    }

    private static BuyingList buy(Yard yard, Need... needs) {
        return Buyer.buy(List.of(needs), yard, 100_000);
    }

    private static Stock twelve() {
        return stock("2x12", WIDE, List.of(), sold(8, "20.00"), sold(10, "25.00"), sold(16, "42.00"));
    }

    /** 40 + 1/8 + 40 and half an inch at each end are 81 1/8 of 96; from 81 1/8 on what is left is 14 3/4, kept. */
    @Test
    void cuts_are_read_from_one_end_with_trim_and_kerf() {
        BuyingList list = buy(yard(List.of(), twelve()), need("T", Use.TREADS, 2, Length.inches(40)));
        Board board = list.orders().get(0).boards().get(0);
        assertThat(board.cuts()).extracting(Cut::from).containsExactly(Length.inches(0, 1, 2), Length.inches(40, 5, 8));
        assertThat(board.cuts()).extracting(Cut::to).containsExactly(Length.inches(40, 1, 2), Length.inches(80, 5, 8));
        assertThat(board.left()).isEqualTo(Length.inches(15, 1, 4));
        assertThat(board.isKept()).isTrue();
        assertThat(list.costSoFar()).hasToString("20.00 USD");
        assertThat(list.isComplete()).isTrue();
    }

    /** Two of 48 do not come off 8 ft once its ends are trimmed, so a board of 10 ft at 25.00 is cheaper than two. */
    @Test
    void end_trims_are_counted() {
        BuyingList list = buy(yard(List.of(), twelve()), need("T", Use.TREADS, 2, Length.inches(48)));
        assertThat(list.costSoFar()).hasToString("25.00 USD");
    }

    /** A pair that nests in 180 in fits one board of 16 ft at 42.00; singly each takes a board of 10 ft, 50.00. */
    @Test
    void two_stringers_share_a_board_when_that_is_cheaper() {
        Need stringers = new Need(
                "S",
                "stringer",
                Use.STRINGERS,
                2,
                THICK,
                WIDE,
                Length.inches(100),
                List.of(),
                Optional.of(new Need.Nested(Length.inches(180), Need.Ends.HEADS)));
        BuyingList list = buy(yard(List.of(), twelve()), stringers);
        Board board = list.orders().get(0).boards().get(0);
        assertThat(board.cuts()).extracting(Cut::pieces).containsExactly(2);
        assertThat(list.costSoFar()).hasToString("42.00 USD");
        Need apart = new Need(
                "S",
                "stringer",
                Use.STRINGERS,
                2,
                THICK,
                WIDE,
                Length.inches(100),
                List.of(),
                Optional.of(new Need.Nested(Length.inches(195), Need.Ends.HEADS)));
        assertThat(buy(yard(List.of(), twelve()), apart).costSoFar()).hasToString("50.00 USD");
    }

    @Test
    void the_rack_is_free_and_not_trimmed() {
        RackPiece piece = new RackPiece("2x12", Length.inches(40), Length.ZERO, 1, "");
        BuyingList list = buy(yard(List.of(piece), twelve()), need("T", Use.TREADS, 1, Length.inches(40)));
        assertThat(list.costSoFar().isZero()).isTrue();
        assertThat(list.orders().get(0).boards().get(0).trim().isZero()).isTrue();
    }

    @Test
    void a_board_meant_for_the_piece_goes_first_then_the_narrowest() {
        Stock wide = stock("2x14", Length.inches(13, 1, 4), List.of(), sold(8, "1.00"));
        Stock meant = stock("tread board", Length.inches(13, 1, 4), List.of(Use.TREADS), sold(8, "30.00"));
        Yard yard = yard(List.of(), wide, twelve(), meant);
        BuyingList list =
                buy(yard, need("T", Use.TREADS, 1, Length.inches(40)), need("F", Use.FOOT, 1, Length.inches(40)));
        assertThat(list.orders()).extracting(order -> order.stock().name()).containsExactly("2x12", "tread board");
    }

    @Test
    void a_piece_longer_than_every_board_is_named_with_what_to_do() {
        BuyingList list = buy(yard(List.of(), twelve()), need("S", Use.STRINGERS, 2, Length.inches(200)));
        assertThat(list.orders()).isEmpty();
        assertThat(list.isComplete()).isFalse();
        Unmet unmet = list.unmet().get(0);
        assertThat(unmet.because()).isEqualTo("16'-8\" long, and no 2x12 yields more than 15'-11\"");
        assertThat(unmet.advice()).contains("order a longer board", "change the design", "splice");
    }

    @Test
    void a_section_nobody_sells_is_named() {
        Need odd = new Need(
                "R",
                "riser board",
                Use.RISERS,
                2,
                Length.inches(0, 3, 4),
                WIDE,
                Length.inches(40),
                List.of(),
                Optional.empty());
        BuyingList list = buy(yard(List.of(), twelve()), odd);
        assertThat(list.unmet().get(0).because())
                .isEqualTo("the yard sells nothing 3/4\" thick and 11 1/4\" wide or wider for riser boards");
    }

    @Test
    void too_few_boards_are_told() {
        BoardLength one = new BoardLength(Length.feet(8), usd("20.00"), Optional.of(1));
        BuyingList list =
                buy(yard(List.of(), stock("2x12", WIDE, List.of(), one)), need("T", Use.TREADS, 2, Length.inches(60)));
        assertThat(list.unmet())
                .extracting(Unmet::because)
                .containsExactly("the yard and the rack have too few boards of 2x12");
    }

    /** Without any price the shortest boards that do are planned, and the list is not complete: never a price of zero. */
    @Test
    void without_a_price_the_order_has_no_cost() {
        BoardLength eight = new BoardLength(Length.feet(8), Optional.empty(), Optional.empty());
        BoardLength ten = new BoardLength(Length.feet(10), Optional.empty(), Optional.empty());
        BuyingList list = buy(
                yard(List.of(), stock("2x12", WIDE, List.of(), ten, eight)),
                need("T", Use.TREADS, 1, Length.inches(60)));
        StockOrder order = list.orders().get(0);
        assertThat(order.cost()).isEmpty();
        assertThat(order.boards()).extracting(Board::length).containsExactly(Length.feet(8));
        assertThat(list.isComplete()).isFalse();
    }

    @Test
    void a_length_without_a_price_is_left_out_where_others_have_one() {
        BoardLength unpriced = new BoardLength(Length.feet(8), Optional.empty(), Optional.empty());
        BuyingList list = buy(
                yard(List.of(), stock("2x12", WIDE, List.of(), unpriced, sold(10, "25.00"))),
                need("T", Use.TREADS, 1, Length.inches(60)));
        assertThat(list.costSoFar()).hasToString("25.00 USD");
        assertThat(list.isComplete()).isTrue();
    }
}
