package pitchboard.afterwards;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.costing.Costing;
import pitchboard.costing.LineKind;
import pitchboard.costing.Price;
import pitchboard.costing.Rates;
import pitchboard.costing.Task;
import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/**
 * A job looked back on.
 *
 * @param inputs the fingerprint of the quote that was planned by
 * @param tasks every task that was planned or done
 * @param kinds every kind of cost that was planned or noted
 */
public record Afterwards(Costing planned, String inputs, Took took, List<TaskLine> tasks, List<KindLine> kinds) {
    /** Planning figures are kept to the thousandth of an hour. */
    private static final long STEPS = 1000;

    public Afterwards {
        tasks = List.copyOf(tasks);
        kinds = List.copyOf(kinds);
    }

    /**
     * One task. Hours are the whole crew's by the clock.
     *
     * @param counted how often it was planned
     * @param done how often it was done
     * @param plannedEach hours for each, as planned; those from memory where the crew had none
     * @param fromMemory whether it had none
     * @param planned hours for all that was counted
     * @param taken empty when nobody noted any
     */
    public record TaskLine(
            Task task,
            Ratio counted,
            Ratio done,
            Ratio plannedEach,
            boolean fromMemory,
            Ratio planned,
            Optional<Ratio> taken) {
        /** Above zero when it took longer than planned. */
        public Optional<Ratio> difference() {
            return taken.map(hours -> hours.minus(planned));
        }

        /** The hours for each that would have been right, to the thousandth; empty when that cannot be told. */
        public Optional<Ratio> rightEach() {
            return taken.filter(hours -> done.signum() > 0)
                    .map(hours -> Ratio.of(
                            hours.dividedBy(done).times(STEPS).nearest().longValueExact(), STEPS));
        }
    }

    /**
     * One kind of cost.
     *
     * @param planned empty while a price was missing
     * @param taken empty when nobody noted any, though some was planned
     */
    public record KindLine(LineKind kind, Optional<Money> planned, Optional<Money> taken) {
        /** Above zero when it cost more than planned. */
        public Optional<Money> difference() {
            return planned.flatMap(before -> taken.map(after -> after.minus(before)));
        }
    }

    /** @throws IllegalArgumentException when both are in different currencies */
    public static Afterwards of(Costing planned, String inputs, Took took) {
        if (!planned.rates().currency().equals(took.currency())) {
            throw new IllegalArgumentException(
                    "planned in " + planned.rates().currency().code() + ", noted in "
                            + took.currency().code());
        }
        List<TaskLine> tasks = tasks(planned, took);
        List<KindLine> kinds = new ArrayList<>();
        for (LineKind kind : LineKind.values()) {
            Optional<Money> taken = kind == LineKind.LABOUR ? labour(planned.rates(), took) : spent(took, kind);
            Optional<Money> before = planned.sum(kind);
            boolean nothing = before.filter(Money::isZero).isPresent();
            if (!nothing || taken.isPresent()) {
                kinds.add(new KindLine(kind, before, taken));
            }
        }
        return new Afterwards(planned, inputs, took, tasks, kinds);
    }

    private static List<TaskLine> tasks(Costing planned, Took took) {
        Rates rates = planned.rates();
        Map<Task, Ratio> counted = new EnumMap<>(Task.class);
        planned.work().forEach(work -> counted.put(work.task(), work.times()));
        List<TaskLine> lines = new ArrayList<>();
        for (Task task : Task.values()) {
            Ratio times = counted.getOrDefault(task, Ratio.ZERO);
            Optional<Ratio> hours = hours(rates, took, task);
            Ratio done = took.done().getOrDefault(task, times);
            if (times.signum() > 0 || hours.isPresent()) {
                Ratio each = rates.hoursOf(task);
                lines.add(new TaskLine(task, times, done, each, rates.isFromMemory(task), times.times(each), hours));
            }
        }
        return lines;
    }

    /** One of two for three hours is an hour and a half of both. */
    private static Optional<Ratio> hours(Rates rates, Took took, Task task) {
        return took.worked().stream()
                .filter(worked -> worked.task() == task)
                .map(worked -> worked.hours().times(Ratio.of(worked.people().orElse(rates.people()), rates.people())))
                .reduce(Ratio::plus);
    }

    private static Optional<Money> labour(Rates rates, Took took) {
        return took.worked().stream()
                .map(worked -> worked.hours().times((long) worked.people().orElse(rates.people())))
                .reduce(Ratio::plus)
                .map(hours -> rates.hour().times(hours));
    }

    private static Optional<Money> spent(Took took, LineKind kind) {
        return took.spent().stream()
                .filter(spent -> spent.kind() == kind)
                .map(Took.Spent::cost)
                .reduce(Money::plus)
                .map(Money::toCoin);
    }

    /** What was planned and nobody noted, in words; while there is any, sums are not the whole. */
    public List<String> notNoted() {
        List<String> missing = new ArrayList<>();
        tasks.stream()
                .filter(line -> line.taken().isEmpty() && line.planned().signum() > 0)
                .forEach(line -> missing.add("hours of: " + line.task().words()));
        kinds.stream()
                .filter(line -> line.taken().isEmpty() && line.kind() != LineKind.LABOUR)
                .forEach(line -> missing.add("costs of: " + line.kind().words()));
        return missing;
    }

    /** Whether the work was noted for the quote that it is held against, as far as anybody said. */
    public boolean isForThisQuote() {
        return took.inputs().map(inputs::equals).orElse(true);
    }

    /** All costs that were noted. */
    public Money cost() {
        Money sum = Money.none(took.currency());
        for (KindLine line : kinds) {
            sum = sum.plus(line.taken().orElse(Money.none(took.currency())));
        }
        return sum;
    }

    /** What the customer paid, or was to pay; empty while a price is missing. */
    public Optional<Money> paid() {
        return took.paid().or(() -> planned.price().map(Price::total));
    }

    /** What is left for overhead and profit when taxes and costs are paid; taxes are those of the quote. */
    public Optional<Money> left() {
        return paid().flatMap(paid ->
                planned.price().map(price -> paid.minus(price.taxTotal()).minus(cost())));
    }

    /** What was to be left. */
    public Optional<Money> plannedLeft() {
        return planned.price()
                .map(price -> price.total().minus(price.taxTotal()).minus(price.direct()));
    }

    /** The planning figures that would have been right, for the tasks that tell. */
    public Map<Task, Ratio> rightHours() {
        Map<Task, Ratio> right = new EnumMap<>(Task.class);
        tasks.forEach(line -> line.rightEach().ifPresent(each -> right.put(line.task(), each)));
        return Collections.unmodifiableMap(right);
    }

    /** The rates with these figures, for the next job. */
    public Rates betterRates() {
        return planned.rates().withHours(rightHours());
    }
}
