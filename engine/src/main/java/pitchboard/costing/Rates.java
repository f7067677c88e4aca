package pitchboard.costing;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.measure.Ratio;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/**
 * What the crew asks and what it reckons with.
 *
 * @param people who work together; each is paid for every hour of the crew
 * @param hour what an hour of one of them costs
 * @param hours for each task; a task that is missing takes its figure from memory
 * @param coats of finish on every piece; zero when none is put on
 * @param waste added to sundries before whole packs are counted
 * @param overhead on all direct cost
 * @param profit on direct cost and overhead
 * @param taxes by kind of line, on its price; a kind that is missing is not taxed
 * @param roundTo the price is rounded up to a multiple of it
 * @param deposit share of the price due with the order
 * @param stages after the deposit; what they leave is due when the work is done
 * @param validDays how long the offer holds
 * @param staleDays prices older than this are flagged
 * @param wording what is printed on the quote
 */
public record Rates(
        String name,
        Day date,
        Currency currency,
        int people,
        Money hour,
        Map<Task, Ratio> hours,
        Ratio waste,
        List<Pack> packs,
        Optional<Pad> pad,
        int coats,
        List<Extra> extras,
        Ratio overhead,
        Ratio profit,
        Map<LineKind, Ratio> taxes,
        Money roundTo,
        Ratio deposit,
        List<Stage> stages,
        int validDays,
        int staleDays,
        Wording wording) {
    /**
     * What is printed on the quote, in the crew's own words.
     *
     * @param from who makes the offer: name, address, telephone
     * @param terms what holds for the work
     * @param exclusions what is not in the price
     */
    public record Wording(List<String> from, List<String> terms, List<String> exclusions) {
        public Wording {
            from = List.copyOf(from);
            terms = List.copyOf(terms);
            exclusions = List.copyOf(exclusions);
        }
    }

    public Rates {
        hours = Collections.unmodifiableMap(copy(Task.class, hours));
        taxes = Collections.unmodifiableMap(copy(LineKind.class, taxes));
        packs = List.copyOf(packs);
        extras = List.copyOf(extras);
        stages = List.copyOf(stages);
    }

    private static <K extends Enum<K>> EnumMap<K, Ratio> copy(Class<K> kind, Map<K, Ratio> map) {
        EnumMap<K, Ratio> copy = new EnumMap<>(kind);
        copy.putAll(map);
        return copy;
    }

    /** The same rates with other planning figures; those of other tasks stay. */
    public Rates withHours(Map<Task, Ratio> better) {
        EnumMap<Task, Ratio> all = copy(Task.class, hours);
        all.putAll(better);
        return new Rates(
                name, date, currency, people, hour, all, waste, packs, pad, coats, extras, overhead, profit, taxes,
                roundTo, deposit, stages, validDays, staleDays, wording);
    }

    /** The crew's own figure, or the one from memory. */
    public Ratio hoursOf(Task task) {
        return hours.getOrDefault(task, task.fromMemory());
    }

    public boolean isFromMemory(Task task) {
        return !hours.containsKey(task);
    }

    public Ratio taxOf(LineKind kind) {
        return taxes.getOrDefault(kind, Ratio.ZERO);
    }
}
