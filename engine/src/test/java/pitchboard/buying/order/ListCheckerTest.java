package pitchboard.buying.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import pitchboard.buying.need.Need;
import pitchboard.buying.yard.BadEnd;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.Price;
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

/** A list that is right has no faults; one thing changed in it is seen. */
final class ListCheckerTest {
    private static final Currency USD = new Currency("USD", 2);
    private static final Length THICK = Length.inches(1, 1, 2);
    private static final Length WIDE = Length.inches(5, 1, 2);
    private static final List<Need> NEEDS =
            List.of(new Need("T", "tread", Use.TREADS, 4, THICK, WIDE, Length.inches(40), List.of(), Optional.empty()));

    private static BuyingList right() {
        Money price = new Money(new BigDecimal("11.00"), USD);
        BoardLength eight = new BoardLength(Length.feet(8), Optional.of(new Price.PerBoard(price)), Optional.empty());
        Stock stock = new Stock(
                "2x6",
                THICK,
                WIDE,
                new Stock.Wood("", "", ""),
                List.of(),
                Length.ZERO,
                new BadEnd(Length.inches(2), List.of()),
                Optional.empty(),
                List.of(eight));
        Saw saw = new Saw(Length.inches(0, 1, 8), Length.inches(0, 1, 2), Length.inches(12));
        Yard yard = new Yard(
                "yard",
                "",
                new Day(2027, 5, 3),
                USD,
                Tape.Units.INCHES,
                saw,
                Splicing.NEVER,
                List.of(stock),
                List.of());
        return Buyer.buy(NEEDS, yard, 100_000);
    }

    private static List<String> changed(UnaryOperator<Board> change) {
        BuyingList list = right();
        StockOrder order = list.orders().get(0);
        List<Board> boards = new ArrayList<>(order.boards());
        boards.set(0, change.apply(boards.get(0)));
        StockOrder other = new StockOrder(
                order.stock(), order.needs(), List.of(), boards, order.cost(), order.leastCost(), order.proof());
        return ListChecker.faults(NEEDS, new BuyingList(list.yard(), List.of(other), List.of()));
    }

    private static Board with(Board board, Length bad, List<Cut> cuts) {
        return new Board(board.origin(), board.length(), board.trim(), bad, cuts, board.left(), board.isKept());
    }

    private static Cut moved(Cut cut, Length by) {
        return new Cut(cut.need(), cut.pieces(), cut.from().plus(by), cut.to().plus(by));
    }

    @Test
    void a_right_list_has_no_faults() {
        assertThat(changed(board -> board)).isEmpty();
    }

    @Test
    void a_piece_too_few_is_seen() {
        assertThat(changed(board -> with(board, board.bad(), board.cuts().subList(0, 1))))
                .containsExactly("T is cut 3 times instead of 4");
    }

    @Test
    void a_cut_without_its_kerf_is_seen() {
        assertThat(changed(board -> with(
                        board,
                        board.bad(),
                        List.of(
                                board.cuts().get(0),
                                moved(
                                        board.cuts().get(1),
                                        Length.inches(0, 1, 16).negated())))))
                .containsExactly("T begins before the saw is through");
    }

    /** 80 5/8 in is the end of the second piece; 92 1/2 is where the sound part of 8 ft less 2 in ends, moved past it. */
    @Test
    void a_cut_into_the_bad_end_is_seen() {
        assertThat(changed(board -> with(
                        board,
                        board.bad(),
                        List.of(board.cuts().get(0), moved(board.cuts().get(1), Length.inches(14))))))
                .containsExactly("2x6: a board is cut beyond its sound part");
        assertThat(changed(board -> with(board, Length.ZERO, board.cuts())))
                .containsExactly("2x6: a bad end is not left out");
    }

    @Test
    void a_cost_that_is_not_the_sum_is_seen() {
        BuyingList list = right();
        StockOrder order = list.orders().get(0);
        Optional<Money> other = Optional.of(new Money(new BigDecimal("21.99"), USD));
        StockOrder dearer = new StockOrder(
                order.stock(), order.needs(), List.of(), order.boards(), other, order.leastCost(), order.proof());
        assertThat(ListChecker.faults(NEEDS, new BuyingList(list.yard(), List.of(dearer), List.of())))
                .containsExactly("2x6: boards of 22.00 USD are said to cost 21.99 USD");
    }
}
