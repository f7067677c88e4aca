package pitchboard.afterwards;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.costing.LineKind;
import pitchboard.costing.Task;
import pitchboard.measure.Ratio;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/**
 * What was noted while a job was built.
 *
 * @param inputs the fingerprint on the quote that the work was done for; empty when nobody noted it
 * @param paid what the customer paid, taxes in it; empty when it is the price of the quote
 * @param done how much there really was of a task, where it was not as counted
 */
public record Took(
        String name,
        Currency currency,
        Optional<String> inputs,
        Optional<Money> paid,
        List<Worked> worked,
        List<Spent> spent,
        Map<Task, Ratio> done) {
    public Took {
        worked = List.copyOf(worked);
        spent = List.copyOf(spent);
        EnumMap<Task, Ratio> copy = new EnumMap<>(Task.class);
        copy.putAll(done);
        done = Collections.unmodifiableMap(copy);
    }

    /**
     * Hours on one day.
     *
     * @param hours by the clock
     * @param people who worked; empty for the whole crew
     * @param who in words; may be empty
     */
    public record Worked(Day day, Task task, Ratio hours, Optional<Integer> people, String who) {}

    /**
     * Money on one day.
     *
     * @param kind anything but labour, which is hours
     * @param who in words; may be empty
     */
    public record Spent(Day day, LineKind kind, String what, Money cost, String who) {}
}
