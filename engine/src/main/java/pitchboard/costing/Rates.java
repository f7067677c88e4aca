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
 * @param waste added to sundries before whole packs are counted
 * @param overhead on all direct cost
 * @param profit on direct cost and overhead
 * @param taxes by kind of line, on its price; a kind that is missing is not taxed
 * @param roundTo the price is rounded up to a multiple of it
 * @param deposit share of the price due with the order
 * @param stages after the deposit; what they leave is due when the work is done
 * @param validDays how long the offer holds
 * @param staleDays prices older than this are flagged
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
        List<Extra> extras,
        Ratio overhead,
        Ratio profit,
        Map<LineKind, Ratio> taxes,
        Money roundTo,
        Ratio deposit,
        List<Stage> stages,
        int validDays,
        int staleDays,
        List<String> terms,
        List<String> exclusions) {
    public Rates {
        hours = Collections.unmodifiableMap(copy(Task.class, hours));
        taxes = Collections.unmodifiableMap(copy(LineKind.class, taxes));
        packs = List.copyOf(packs);
        extras = List.copyOf(extras);
        stages = List.copyOf(stages);
        terms = List.copyOf(terms);
        exclusions = List.copyOf(exclusions);
    }

    private static <K extends Enum<K>> EnumMap<K, Ratio> copy(Class<K> kind, Map<K, Ratio> map) {
        EnumMap<K, Ratio> copy = new EnumMap<>(kind);
        copy.putAll(map);
        return copy;
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
