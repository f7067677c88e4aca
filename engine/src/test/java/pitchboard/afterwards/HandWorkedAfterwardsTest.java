package pitchboard.afterwards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.costing.Costing;
import pitchboard.costing.Estimator;
import pitchboard.costing.HandWorked;
import pitchboard.costing.LineKind;
import pitchboard.costing.Rates;
import pitchboard.costing.Task;
import pitchboard.measure.Ratio;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/**
 * The quote of {@code HandWorkedQuoteTest}, and what the job took, worked by hand. Two people at 46.00, 92.00 an hour.
 *
 * <pre>
 *                     planned              taken                                  right for each
 *   first stringer    1.25 h               2.5 h by one of two      = 1.25 h      1.25
 *   further stringers 2 x 0.5 = 1 h        1.2 h of both            = 1.2 h       0.6
 *   hanging           3 x 0.5 = 1.5 h      nobody noted any
 *   treads            13 x 0.25 = 3.25 h   2 h of both, 3 h by one  = 3.5 h       12 done: 0.292
 *   pad               4 h                  5 h of both              = 5 h         5
 *   setting up        2 h                  2 h of both              = 2 h         2
 *
 *   lumber            300.00               260.00 + 52.50           = 312.50      + 12.50
 *   sundries           92.20               nobody noted any
 *   labour           1196.00               2.5 + 2.4 + 4 + 3 + 10 + 4 = 25.9 h x 46 = 1191.40     - 4.60
 *   extras             60.00               60.00                                                  0.00
 *   all              1648.20               1563.90 without sundries
 *   paid 2065.00, taxes 33.82: 2031.18 less 1648.20 = 382.98 planned, less 1563.90 = 467.28 left
 * </pre>
 */
final class HandWorkedAfterwardsTest {
    private static final Day DAY = new Day(2027, 6, 7);

    private static Costing planned() {
        Rates rates = HandWorked.rates(HandWorked.packs());
        return Estimator.cost(
                List.of(HandWorked.stair()),
                HandWorked.lumber(Optional.of(HandWorked.usd("300"))),
                rates,
                HandWorked.QUOTED);
    }

    private static Took.Worked worked(Task task, Ratio hours, Integer... people) {
        return new Took.Worked(DAY, task, hours, people.length == 0 ? Optional.empty() : Optional.of(people[0]), "");
    }

    private static Took.Spent spent(LineKind kind, String cost) {
        return new Took.Spent(DAY, kind, "a bill", HandWorked.usd(cost), "");
    }

    private static Took took() {
        return new Took(
                "the stair",
                HandWorked.USD,
                Optional.of("AAAA-AAAA"),
                Optional.empty(),
                List.of(
                        worked(Task.FIRST_STRINGER, Ratio.of(5, 2), 1),
                        worked(Task.FURTHER_STRINGER, Ratio.of(6, 5)),
                        worked(Task.TREAD, Ratio.of(2)),
                        worked(Task.TREAD, Ratio.of(3), 1),
                        worked(Task.PAD, Ratio.of(5)),
                        worked(Task.SETTING_UP, Ratio.of(2))),
                List.of(spent(LineKind.LUMBER, "260"), spent(LineKind.LUMBER, "52.5"), spent(LineKind.EXTRAS, "60")),
                Map.of(Task.TREAD, Ratio.of(12)));
    }

    private static Afterwards after() {
        return Afterwards.of(planned(), "AAAA-AAAA", took());
    }

    private static String line(Afterwards.TaskLine line) {
        return line.task().words() + ": " + line.planned() + ", "
                + line.taken().map(Ratio::toString).orElse("-") + ", "
                + line.rightEach().map(Ratio::toString).orElse("-");
    }

    @Test
    void every_task_is_as_worked() {
        assertThat(after().tasks())
                .extracting(HandWorkedAfterwardsTest::line)
                .containsExactly(
                        "first stringer: 5/4, 5/4, 5/4",
                        "further stringer: 1, 6/5, 3/5",
                        "hanging a stringer: 3/2, -, -",
                        "tread: 13/4, 7/2, 73/250",
                        "pad: 4, 5, 5",
                        "setting up: 2, 2, 2");
    }

    @Test
    void every_kind_of_cost_is_as_worked() {
        assertThat(after().kinds())
                .containsExactly(
                        new Afterwards.KindLine(LineKind.LUMBER, usd("300"), usd("312.50")),
                        new Afterwards.KindLine(LineKind.SUNDRIES, usd("92.20"), Optional.empty()),
                        new Afterwards.KindLine(LineKind.LABOUR, usd("1196"), usd("1191.40")),
                        new Afterwards.KindLine(LineKind.EXTRAS, usd("60"), usd("60")));
        assertThat(after().kinds().get(2).difference().map(Money::digits)).contains("-4.60");
        assertThat(after().cost()).isEqualTo(HandWorked.usd("1563.90"));
    }

    private static Optional<Money> usd(String amount) {
        return Optional.of(HandWorked.usd(amount));
    }

    @Test
    void what_is_left_is_as_worked() {
        assertThat(after().plannedLeft()).isEqualTo(usd("382.98"));
        assertThat(after().left()).isEqualTo(usd("467.28"));
    }

    @Test
    void what_nobody_noted_is_named_and_never_nothing() {
        assertThat(after().notNoted()).containsExactly("hours of: hanging a stringer", "costs of: sundries");
        assertThat(after().betterRates().isFromMemory(Task.HANGING)).isTrue();
    }

    /** What was not planned takes part, too: it has no figure of its own to be held against. */
    @Test
    void work_that_was_not_planned_shows() {
        List<Took.Worked> more = new ArrayList<>(took().worked());
        more.add(worked(Task.POST, Ratio.of(3)));
        Took took = new Took(
                "",
                HandWorked.USD,
                Optional.empty(),
                usd("2100"),
                more,
                took().spent(),
                Map.of(Task.POST, Ratio.of(2)));
        Afterwards after = Afterwards.of(planned(), "BBBB-BBBB", took);
        assertThat(after.tasks()).extracting(HandWorkedAfterwardsTest::line).contains("post: 0, 3, 3/2");
        assertThat(after.left()).isEqualTo(usd("226.28"));
        assertThat(after.isForThisQuote()).isTrue();
    }

    @Test
    void the_rates_with_the_right_hours_differ_in_nothing_else() {
        Rates before = planned().rates();
        Rates better = after().betterRates();
        assertThat(better.hoursOf(Task.TREAD)).isEqualTo(Ratio.of(292, 1000));
        assertThat(better.withHours(before.hours()).hoursOf(Task.TREAD)).isEqualTo(Ratio.of(1, 4));
        assertThat(better.packs()).isEqualTo(before.packs());
        assertThat(better.wording()).isEqualTo(before.wording());
    }

    @Test
    void a_quote_made_from_the_right_hours_takes_the_hours_that_it_took() {
        Costing again = Estimator.cost(
                List.of(HandWorked.stair()), HandWorked.lumber(usd("300")), after().betterRates(), HandWorked.QUOTED);
        Afterwards second = Afterwards.of(again, "CCCC-CCCC", took());
        assertThat(second.isForThisQuote()).isFalse();
        assertThat(second.tasks().get(1).difference()).contains(Ratio.ZERO);
    }

    @Test
    void two_currencies_are_refused() {
        Took other = new Took(
                "", new Currency("EUR", 2), Optional.empty(), Optional.empty(), List.of(), List.of(), Map.of());
        assertThatThrownBy(() -> Afterwards.of(planned(), "", other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("planned in USD, noted in EUR");
    }
}
