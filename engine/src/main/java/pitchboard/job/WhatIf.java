package pitchboard.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.order.YardLine;
import pitchboard.buying.yard.Yard;
import pitchboard.costing.Price;
import pitchboard.costing.Rates;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.money.Day;
import pitchboard.money.Money;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.buying.Weighed;
import pitchboard.sheet.buying.WeighedSheet;

/**
 * One job, and the same job with one thing changed at a time, each planned, judged and bought anew: which is cheaper, and
 * whether it may be built.
 *
 * @param base the job as it is
 * @param cases the base and every change that a stair came of, cheapest first; without a price last
 * @param without changes that no stair fits
 * @param fingerprint of job, price list and rates
 */
public record WhatIf(
        Outcome.Designed base, Yard yard, List<Case> cases, List<String> without, Fingerprint fingerprint) {
    public WhatIf {
        cases = List.copyOf(cases);
        without = List.copyOf(without);
    }

    /**
     * One way to do it.
     *
     * @param boards what the boards cost; empty while a piece cannot be had or has no price
     * @param whole the price of the whole job; empty without rates, or while a price is missing
     * @param more what the boards cost more than as it is, below zero when less; empty when one of both is
     * @param failures rules that fail and members that do not carry
     * @param because what makes the difference, in a sentence
     */
    public record Case(
            String name,
            boolean isAsItIs,
            Optional<Money> boards,
            Optional<Money> whole,
            Optional<Money> more,
            String rules,
            String strength,
            List<String> failures,
            String because) {
        public Case {
            failures = List.copyOf(failures);
        }
    }

    /**
     * What the whole job is priced from.
     *
     * @param text the text the rates were read from, for the fingerprint
     */
    public record Pricing(Rates rates, String text, Day on) {}

    /**
     * Plans, judges and buys every case.
     *
     * @param priceList the text the yard was read from, for the fingerprint
     * @throws IllegalArgumentException when price list and rates are in different currencies
     */
    public static WhatIf of(Outcome.Designed base, Yard yard, String priceList, Optional<Pricing> pricing) {
        Purchase bought = Purchase.of(List.of(base), yard, priceList);
        List<Case> cases = new ArrayList<>(List.of(weighed("as it is", true, base, bought, bought.list(), pricing)));
        List<String> without = new ArrayList<>();
        for (Changed changed : Changed.listAll(base, yard, bought.list().orders())) {
            Outcome outcome = Pipeline.solve(changed.job());
            if (outcome instanceof Outcome.Designed designed) {
                Purchase other = Purchase.of(List.of(designed), changed.yard(), priceList);
                cases.add(weighed(changed.name(), false, designed, other, bought.list(), pricing));
            } else {
                without.add(changed.name());
            }
        }
        cases.sort(Comparator.comparing(WhatIf::rank));
        String rates = pricing.map(each -> each.text() + each.on()).orElse("");
        Fingerprint fingerprint = Fingerprint.of(bought.fingerprint().text() + "\nwhat if\n" + rates);
        return new WhatIf(base, yard, cases, without, fingerprint);
    }

    private static Rank rank(Case each) {
        return new Rank(each.whole().or(each::boards), !each.isAsItIs());
    }

    /** Cheapest first, without a price last; as it is before what costs the same. */
    private record Rank(Optional<Money> price, boolean isChanged) implements Comparable<Rank> {
        @Override
        public int compareTo(Rank other) {
            if (price.isEmpty() || other.price.isEmpty()) {
                return Boolean.compare(price.isEmpty(), other.price.isEmpty());
            }
            int byPrice = price.get().compareTo(other.price.get());
            return byPrice != 0 ? byPrice : Boolean.compare(isChanged, other.isChanged);
        }
    }

    private static Case weighed(
            String name,
            boolean isAsItIs,
            Outcome.Designed designed,
            Purchase bought,
            BuyingList base,
            Optional<Pricing> pricing) {
        Optional<Money> boards = cost(bought.list());
        Optional<Money> more = boards.flatMap(money -> cost(base).map(money::minus));
        Optional<Money> whole = pricing.flatMap(each -> Quotation.of(bought, each.rates(), each.text(), each.on())
                .costing()
                .price()
                .map(Price::total));
        return new Case(
                name,
                isAsItIs,
                boards,
                whole,
                more,
                Cautions.rules(designed),
                Cautions.strength(designed),
                Cautions.failures(designed),
                isAsItIs
                        ? ""
                        : because(bought.list(), base, designed.job().brief().tape()));
    }

    private static Optional<Money> cost(BuyingList list) {
        return list.isComplete() ? Optional.of(list.costSoFar()) : Optional.empty();
    }

    /** The stock that makes most of the difference, with what is bought of it now and what was before. */
    private static String because(BuyingList now, BuyingList before, Tape tape) {
        if (!now.unmet().isEmpty()) {
            return now.unmet().get(0).need().name() + ": " + now.unmet().get(0).because();
        }
        Map<String, String> fresh = bought(now, tape);
        Map<String, String> old = bought(before, tape);
        String most = "";
        Money largest = Money.none(now.yard().currency());
        List<String> names = new ArrayList<>(fresh.keySet());
        old.keySet().stream().filter(name -> !names.contains(name)).forEach(names::add);
        for (String name : names) {
            Money difference = cost(now, name).minus(cost(before, name));
            Money size =
                    difference.isNegative() ? Money.none(now.yard().currency()).minus(difference) : difference;
            if (size.compareTo(largest) > 0) {
                largest = size;
                most = name;
            }
        }
        return most.isEmpty()
                ? "the same boards, or others for the same money"
                : most + ": " + fresh.getOrDefault(most, "nothing") + " instead of "
                        + old.getOrDefault(most, "nothing");
    }

    private static Money cost(BuyingList list, String stock) {
        Money sum = Money.none(list.yard().currency());
        for (StockOrder order : list.orders()) {
            if (order.stock().name().equals(stock)) {
                sum = order.cost().map(sum::plus).orElse(sum);
            }
        }
        return sum;
    }

    private static Map<String, String> bought(BuyingList list, Tape tape) {
        Map<String, String> bought = new LinkedHashMap<>();
        for (StockOrder order : list.orders()) {
            List<String> lines = YardLine.of(order).stream()
                    .map(line ->
                            line.count() + " of " + TapeWriter.write(line.sold().nominal(), tape, Tape.Style.PLAIN))
                    .toList();
            bought.put(order.stock().name(), lines.isEmpty() ? "the rack alone" : String.join(" and ", lines));
        }
        return bought;
    }

    /** One table, on the job's paper. */
    public List<Sheet> sheets() {
        List<Weighed.Row> rows = cases.stream()
                .map(each -> new Weighed.Row(
                        each.name(),
                        each.isAsItIs(),
                        each.boards(),
                        each.whole(),
                        each.more(),
                        each.rules(),
                        each.strength(),
                        each.because()))
                .toList();
        return WeighedSheet.draw(new Weighed(
                base.job().brief().title(),
                base.job().brief().paper(),
                base.job().rulebook().edition().shortName(),
                fingerprint.text(),
                yard.name(),
                yard.date(),
                rows,
                without));
    }
}
