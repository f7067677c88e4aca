package pitchboard.costing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.order.Unmet;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;
import pitchboard.money.Day;
import pitchboard.money.Money;
import pitchboard.parts.Part;
import pitchboard.stair.Stair;

/** Costs a job: lumber as it is bought, sundries by rule, hours by planning figures, extras; then the price. */
public final class Estimator {
    private final Rates rates;
    private final List<CostLine> lines = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();
    private final List<Takeoff> takeoffs = new ArrayList<>();
    private final List<Work> work = new ArrayList<>();
    private final List<PackOrder> packs = new ArrayList<>();

    private Estimator(Rates rates) {
        this.rates = rates;
    }

    /** A stair with its pieces. */
    public record Built(Stair stair, List<Part> parts) {
        public Built {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Costs these stairs.
     *
     * @param list what is bought for them
     * @param quotedOn the day of the quote
     * @throws IllegalArgumentException when price list and rates are in different currencies
     */
    public static Costing cost(List<Built> stairs, BuyingList list, Rates rates, Day quotedOn) {
        if (!list.yard().currency().equals(rates.currency())) {
            throw new IllegalArgumentException(
                    "prices in " + list.yard().currency().code() + ", rates in "
                            + rates.currency().code());
        }
        Estimator estimator = new Estimator(rates);
        estimator.lumber(list);
        estimator.sundries(stairs);
        estimator.labour(stairs);
        rates.extras()
                .forEach(
                        extra -> estimator.line(LineKind.EXTRAS, extra.what(), "as agreed", Optional.of(extra.cost())));
        Optional<Price> price =
                estimator.missing.isEmpty() ? Optional.of(Pricing.price(estimator.lines, rates)) : Optional.empty();
        return new Costing(
                rates,
                quotedOn,
                estimator.takeoffs,
                estimator.packs,
                estimator.work,
                estimator.lines,
                price,
                estimator.missing,
                stale(list, rates, quotedOn));
    }

    private void line(LineKind kind, String what, String working, Optional<Money> cost) {
        lines.add(new CostLine(kind, what, working, cost));
        if (cost.isEmpty()) {
            missing.add(what + ": " + working);
        }
    }

    private void lumber(BuyingList list) {
        for (StockOrder order : list.orders()) {
            String proof = order.proof().cheapest() ? "proved: nothing cheaper" : "not proved to be the cheapest";
            String working = order.cost().isPresent()
                    ? order.bought().size() + " boards, " + proof
                    : "the price list has no price";
            line(LineKind.LUMBER, order.stock().name(), working, order.cost());
        }
        for (Unmet unmet : list.unmet()) {
            line(LineKind.LUMBER, unmet.need().mark() + " " + unmet.need().name(), unmet.because(), Optional.empty());
        }
    }

    private void sundries(List<Built> stairs) {
        for (Built built : stairs) {
            Counting counting = new Counting(built.stair(), built.parts());
            takeoffs.addAll(counting.takeoffs());
            counting.finish(rates.coats()).ifPresent(takeoffs::add);
        }
        rates.pad()
                .ifPresent(pad -> takeoffs.add(new Takeoff(
                        Sundry.CONCRETE, pad.cubicFeet(), "length x width x thickness of the pad, in cubic feet")));
        rates.pad()
                .filter(pad -> pad.gravel().isPositive())
                .ifPresent(pad -> takeoffs.add(new Takeoff(
                        Sundry.GRAVEL, pad.gravelCubicFeet(), "length x width of the pad x thickness of the bed")));
        Map<Sundry, Ratio> amounts = new EnumMap<>(Sundry.class);
        takeoffs.forEach(each -> amounts.merge(each.kind(), each.amount(), Ratio::plus));
        amounts.forEach(this::sundry);
    }

    /** Whole packs of the one size that does it for least. */
    private void sundry(Sundry kind, Ratio amount) {
        Ratio withWaste = amount.times(Ratio.ONE.plus(rates.waste()));
        Optional<Pack> best = rates.packs().stream()
                .filter(pack -> pack.kind() == kind)
                .min(Comparator.comparing(pack -> pack.price().times(packs(pack, withWaste))));
        long count = best.map(pack -> packs(pack, withWaste)).orElse(0L);
        PackOrder order = new PackOrder(kind, amount, withWaste, best, count);
        packs.add(order);
        line(LineKind.SUNDRIES, kind.words(), working(order), order.cost());
    }

    private static String working(PackOrder order) {
        String needed = Decimals.trimmed(order.amount(), 2) + " " + order.kind().unit() + " + waste = "
                + Decimals.trimmed(order.withWaste(), 2);
        return order.pack()
                .map(pack -> needed + "; " + order.packs() + " of " + pack.name() + " at "
                        + pack.price().digits())
                .orElse(needed + "; the rates have no price for it");
    }

    private static long packs(Pack pack, Ratio amount) {
        return amount.dividedBy(pack.holds()).negated().floor().negate().longValueExact();
    }

    private void labour(List<Built> stairs) {
        Map<Task, Ratio> times = new EnumMap<>(Task.class);
        for (Built built : stairs) {
            for (Work each : new Counting(built.stair(), built.parts()).work()) {
                times.merge(each.task(), each.times(), Ratio::plus);
            }
        }
        rates.pad().ifPresent(pad -> times.put(Task.PAD, Ratio.ONE));
        times.put(Task.SETTING_UP, Ratio.ONE);
        times.forEach(this::hours);
    }

    private void hours(Task task, Ratio times) {
        work.add(new Work(task, times));
        Ratio hours = times.times(rates.hoursOf(task));
        String working = Decimals.trimmed(times, 2) + " x " + Decimals.trimmed(rates.hoursOf(task), 3) + " h"
                + (rates.isFromMemory(task) ? " (from memory)" : "") + " x " + rates.people() + " people at "
                + rates.hour().digits();
        Money cost = rates.hour().times(hours.times((long) rates.people()));
        line(LineKind.LABOUR, task.words(), working, Optional.of(cost));
    }

    private static List<String> stale(BuyingList list, Rates rates, Day quotedOn) {
        List<String> stale = new ArrayList<>();
        age(list.yard().name(), list.yard().date(), rates, quotedOn, stale);
        age(rates.name(), rates.date(), rates, quotedOn, stale);
        return stale;
    }

    private static void age(String whose, Day date, Rates rates, Day quotedOn, List<String> stale) {
        int days = quotedOn.daysAfter(date);
        if (days > rates.staleDays()) {
            stale.add("prices of " + whose + " are " + days + " days old on " + quotedOn + "; ask again");
        } else if (days < 0) {
            stale.add("prices of " + whose + " are of " + date + ", after the day of the quote");
        }
    }
}
