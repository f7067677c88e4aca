package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.buying.need.Need;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/** Gives every piece to a stock, and plans each stock. */
public final class Buyer {
    /** Of stocks that yield a piece: what is meant for a use before what is for anything, then the narrowest. */
    public static final Comparator<Stock> FIRST = Comparator.<Stock>comparingInt(
                    stock -> stock.uses().isEmpty() ? 1 : 0)
            .thenComparing(stock -> Length.max(stock.width(), stock.thickness()));

    private final Yard yard;
    private final List<Unmet> unmet = new ArrayList<>();

    private Buyer(Yard yard) {
        this.yard = yard;
    }

    /** @param effort allowed for each plan, see {@code Planner} */
    public static BuyingList buy(List<Need> needs, Yard yard, long effort) {
        Buyer buyer = new Buyer(yard);
        List<StockOrder> orders = new ArrayList<>();
        buyer.shared(needs)
                .forEach((stock, own) -> buyer.order(stock, own, effort).ifPresent(orders::add));
        BuyingList list = new BuyingList(yard, orders, buyer.unmet);
        List<String> faults = ListChecker.faults(needs, list);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the list is at fault: " + String.join("; ", faults));
        }
        return list;
    }

    /** In the order of the price list. */
    private Map<Stock, List<Need>> shared(List<Need> needs) {
        Map<Stock, List<Need>> shared = new LinkedHashMap<>();
        yard.stocks().forEach(stock -> shared.put(stock, new ArrayList<>()));
        for (Need need : needs) {
            Optional<Stock> stock = stock(need);
            stock.ifPresentOrElse(
                    found -> shared.get(found).add(need), () -> unmet.add(new Unmet(need, noStock(need), NO_STOCK)));
        }
        shared.values().removeIf(List::isEmpty);
        return shared;
    }

    private static final String NO_STOCK =
            "add it to the price list with its price, or rip it from what is on the rack";

    private String noStock(Need need) {
        return "the yard sells nothing " + size(need.thickness()) + " thick and " + size(need.width())
                + " wide or wider for " + need.use().words();
    }

    /** One meant for the use before one for anything; of these the narrowest, then the first of the list. */
    private Optional<Stock> stock(Need need) {
        return yard.stocks().stream()
                .filter(stock -> stock.yields(need.use(), need.thickness(), need.width()))
                .min(FIRST);
    }

    private Optional<StockOrder> order(Stock stock, List<Need> needs, long effort) {
        StockPlanner planner = new StockPlanner(yard, stock, effort);
        Length longest = planner.longest();
        List<Need> fitting = new ArrayList<>();
        List<Spliced> spliced = new ArrayList<>();
        for (Need need : needs) {
            Optional<Spliced> made = need.length().isAtMost(longest) ? Optional.empty() : splice(need, longest);
            if (need.length().isAtMost(longest)) {
                fitting.add(need);
            } else if (made.isPresent()) {
                spliced.add(made.get());
                fitting.addAll(made.get().parts());
            } else {
                unmet.add(new Unmet(need, tooLong(stock, need, longest), advice(need)));
            }
        }
        if (fitting.isEmpty()) {
            return Optional.empty();
        }
        Optional<StockOrder> order = planner.plan(fitting);
        if (order.isEmpty()) {
            String because = "the yard and the rack have too few boards of " + stock.name();
            fitting.forEach(need -> unmet.add(new Unmet(need, because, TOO_FEW)));
        }
        return order.map(each -> each.splicing(spliced));
    }

    private Optional<Spliced> splice(Need need, Length longest) {
        return yard.splicing().uses().contains(need.use())
                ? Spliced.find(need, longest, yard.splicing().lap())
                : Optional.empty();
    }

    private static final String TOO_LONG = "order a longer board, change the design so that the piece is shorter, or ";

    private String advice(Need need) {
        if (need.joints().isEmpty()) {
            return TOO_LONG + "ask a licensed engineer for a splice";
        }
        return yard.splicing().uses().contains(need.use())
                ? TOO_LONG + "give it a support nearer to its middle: all joints over supports leave a part too long"
                : TOO_LONG + "write `splice: [ " + need.use().words()
                        + " ]` into the price list: it may be joined over a" + " support";
    }

    private static final String TOO_FEW = "ask the yard for more, or write further lengths into the price list";

    private String tooLong(Stock stock, Need need, Length longest) {
        return size(need.length()) + " long, and no " + stock.name() + " yields more than " + size(longest);
    }

    private String size(Length length) {
        boolean inches = yard.units() == Tape.Units.INCHES;
        Tape tape = new Tape(yard.units(), inches ? Graduation.SIXTEENTH_INCH : Graduation.MILLIMETRE);
        return TapeWriter.write(length, tape, Tape.Style.PLAIN);
    }
}
