package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.PlanChecker;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Proof;
import pitchboard.buying.need.Need;
import pitchboard.buying.search.Planner;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.RackPiece;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Length;
import pitchboard.money.Money;

/** Plans one stock: with no two stringers nested, with one pair, and so on, and takes the best of these plans. */
final class StockPlanner {
    private final Yard yard;
    private final Stock stock;
    private final long effort;
    private final boolean isPriced;
    private final List<BoardLength> sold;
    private final List<RackPiece> rack;

    StockPlanner(Yard yard, Stock stock, long effort) {
        this.yard = yard;
        this.stock = stock;
        this.effort = effort;
        isPriced = stock.lengths().stream()
                .anyMatch(length -> stock.priceOf(length).isPresent());
        sold = stock.lengths().stream()
                .filter(length -> !isPriced || stock.priceOf(length).isPresent())
                .filter(length -> usable(length).isPositive())
                .toList();
        rack = yard.rack().stream()
                .filter(piece -> piece.stock().equals(stock.name()))
                .toList();
    }

    /** The longest piece that can be cut at all. */
    Length longest() {
        Length longest = Length.ZERO;
        for (BoardLength each : sold) {
            longest = Length.max(longest, usable(each));
        }
        for (RackPiece piece : rack) {
            longest = Length.max(longest, piece.length().minus(piece.badEnd()));
        }
        return longest;
    }

    /** Of a bad end nothing is reckoned with, so that a piece that avoids it fits, too. */
    private Length usable(BoardLength length) {
        Length sound = stock.realLength(length).minus(stock.bad().length());
        return sound.minus(yard.saw().endTrim().times(2));
    }

    private record Planned(Sawing sawing, CutProblem problem, CutPlan plan) {
        long cost() {
            return plan.cost(problem);
        }

        int bought() {
            return plan.bought(problem);
        }

        Length left() {
            return sawing.ticks().length(plan.longestLeft(problem));
        }

        boolean beats(Planned other) {
            if (cost() != other.cost()) {
                return cost() < other.cost();
            }
            return bought() != other.bought() ? bought() < other.bought() : left().isMoreThan(other.left());
        }
    }

    /** The best order for these needs, none longer than {@link #longest}; empty when the boards on hand are too few. */
    Optional<StockOrder> plan(List<Need> needs) {
        List<Planned> plans = new ArrayList<>();
        for (int pairs = 0; pairs <= mostPairs(needs); pairs++) {
            Sawing sawing = Sawing.of(stock, yard.saw(), sold, rack, isPriced, lots(needs, pairs));
            CutProblem problem = sawing.problem();
            if (Planner.plan(problem, effort) instanceof PlanOutcome.Planned planned) {
                plans.add(checked(new Planned(sawing, problem, planned.plan())));
            }
        }
        return plans.stream().reduce((a, b) -> b.beats(a) ? b : a).map(best -> order(needs, best, proof(best, plans)));
    }

    private static Planned checked(Planned planned) {
        List<String> faults = PlanChecker.faults(planned.problem(), planned.plan(), planned.cost());
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the planner is at fault: " + String.join("; ", faults));
        }
        return planned;
    }

    /** Only where a pair fits a board. */
    private int mostPairs(List<Need> needs) {
        return needs.stream()
                .filter(need -> need.nested()
                        .filter(pair -> pair.length().isAtMost(longest()))
                        .isPresent())
                .mapToInt(need -> need.count() / 2)
                .sum();
    }

    private List<Sawing.Lot> lots(List<Need> needs, int pairs) {
        List<Sawing.Lot> lots = new ArrayList<>();
        int left = pairs;
        for (Need need : needs) {
            boolean nests = need.nested()
                    .filter(pair -> pair.length().isAtMost(longest()))
                    .isPresent();
            int taken = nests ? Math.min(left, need.count() / 2) : 0;
            left -= taken;
            if (taken > 0) {
                lots.add(new Sawing.Lot(need, 2, taken));
            }
            if (need.count() > 2 * taken) {
                lots.add(new Sawing.Lot(need, 1, need.count() - 2 * taken));
            }
        }
        return lots;
    }

    /** What is known of the best of several plans, each for another number of pairs. */
    private static Proof proof(Planned best, List<Planned> plans) {
        long atLeast = best.cost();
        boolean fewest = true;
        long effort = 0;
        for (Planned each : plans) {
            Proof proof = each.plan().proof();
            atLeast = Math.min(atLeast, proof.atLeast());
            fewest &= proof.fewest() || proof.atLeast() > best.cost();
            effort += proof.effort();
        }
        boolean cheapest = atLeast == best.cost();
        return new Proof(
                atLeast, cheapest, cheapest && fewest, best.plan().proof().longest(), effort);
    }

    private StockOrder order(List<Need> needs, Planned best, Proof proof) {
        List<Board> boards =
                best.plan().boards().stream().map(best.sawing()::board).toList();
        List<Board> sorted = new ArrayList<>(boards);
        sorted.sort((a, b) -> b.length().compareTo(a.length()));
        Optional<Money> cost = isPriced ? Optional.of(Money.ofCoins(best.cost(), yard.currency())) : Optional.empty();
        Optional<Money> least =
                isPriced ? Optional.of(Money.ofCoins(proof.atLeast(), yard.currency())) : Optional.empty();
        return new StockOrder(stock, needs, List.of(), sorted, cost, least, proof);
    }
}
