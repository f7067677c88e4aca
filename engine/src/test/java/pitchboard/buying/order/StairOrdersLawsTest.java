package pitchboard.buying.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pitchboard.Samples;
import pitchboard.buying.need.Need;
import pitchboard.buying.need.Needs;
import pitchboard.buying.yard.BadEnd;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.Price;
import pitchboard.buying.yard.RackPiece;
import pitchboard.buying.yard.Saw;
import pitchboard.buying.yard.Splicing;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;
import pitchboard.parts.PartMaker;
import pitchboard.stair.Stair;

/** What holds for what any stair needs, bought of a yard that sells every section it takes. */
final class StairOrdersLawsTest {
    private static final Samples<Stair> STAIRS = Samples.buildableStairs(60);
    private static final Currency USD = new Currency("USD", 2);
    private static final Saw SAW = new Saw(Length.inches(0, 1, 8), Length.inches(0, 1, 2), Length.inches(16));

    private static List<Need> needs(Stair stair) {
        return Needs.of(stair, PartMaker.partsOf(stair), "", SAW.kerf());
    }

    /** A stock for every section, sold from 6 to 24 ft, dearer by the foot from 16 ft on; some pieces on the rack. */
    private static Yard yard(List<Need> needs) {
        Map<String, Stock> stocks = new TreeMap<>();
        List<RackPiece> rack = new ArrayList<>();
        for (Need need : needs) {
            String name = need.thickness() + " x " + need.width();
            stocks.putIfAbsent(
                    name,
                    new Stock(
                            name,
                            need.thickness(),
                            need.width(),
                            new Stock.Wood("", "", ""),
                            List.of(),
                            Length.inches(0, 1, 2),
                            BadEnd.NONE,
                            Optional.empty(),
                            lengths()));
            rack.add(new RackPiece(name, Length.inches(45), Length.ZERO, 1, ""));
        }
        Day day = new Day(2027, 5, 3);
        return new Yard(
                "yard", "", day, USD, Tape.Units.INCHES, SAW, Splicing.NEVER, List.copyOf(stocks.values()), rack);
    }

    private static List<BoardLength> lengths() {
        List<BoardLength> lengths = new ArrayList<>();
        for (int feet = 6; feet <= 24; feet += 2) {
            BigDecimal price = BigDecimal.valueOf(feet < 16 ? 240L * feet : 285L * feet, 2);
            lengths.add(new BoardLength(
                    Length.feet(feet), Optional.of(new Price.PerBoard(new Money(price, USD))), Optional.empty()));
        }
        return lengths;
    }

    @Test
    void every_piece_is_cut_exactly_once() {
        STAIRS.hold(stair -> {
            List<Need> needs = needs(stair);
            BuyingList list = Buyer.buy(needs, yard(needs), 100_000);
            Map<String, Integer> cut = new TreeMap<>();
            for (StockOrder order : list.orders()) {
                for (Board board : order.boards()) {
                    board.cuts().forEach(each -> cut.merge(each.need().mark(), each.pieces(), Integer::sum));
                }
            }
            list.unmet()
                    .forEach(each -> cut.merge(each.need().mark(), each.need().count(), Integer::sum));
            Map<String, Integer> wanted = new TreeMap<>();
            needs.forEach(need -> wanted.put(need.mark(), need.count()));
            assertThat(cut).isEqualTo(wanted);
        });
    }

    @Test
    void cuts_lie_on_their_board_a_kerf_apart() {
        STAIRS.hold(stair -> {
            List<Need> needs = needs(stair);
            for (StockOrder order : Buyer.buy(needs, yard(needs), 100_000).orders()) {
                order.boards().forEach(StairOrdersLawsTest::walk);
            }
        });
    }

    private static void walk(Board board) {
        Length at = board.trim();
        for (Cut cut : board.cuts()) {
            assertThat(cut.from()).isEqualTo(at);
            Length length = cut.pieces() == 1
                    ? cut.need().length()
                    : cut.need().nested().orElseThrow().length();
            assertThat(cut.to()).isEqualTo(cut.from().plus(length));
            at = cut.to().plus(SAW.kerf());
        }
        Length end = at.minus(SAW.kerf()).plus(board.trim());
        assertThat(end).isLessThanOrEqualTo(board.length());
        assertThat(board.left())
                .isEqualTo(Length.max(Length.ZERO, board.length().minus(at)));
    }

    @Test
    void the_cost_is_the_sum_of_its_boards_to_the_cent_and_proved() {
        STAIRS.hold(stair -> {
            List<Need> needs = needs(stair);
            BuyingList list = Buyer.buy(needs, yard(needs), 100_000);
            Money sum = Money.none(USD);
            for (StockOrder order : list.orders()) {
                for (Board board : order.bought()) {
                    sum = sum.plus(board.price().orElseThrow());
                }
            }
            assertThat(list.costSoFar()).isEqualTo(sum);
            assertThat(list.isProved()).isTrue();
        });
    }
}
