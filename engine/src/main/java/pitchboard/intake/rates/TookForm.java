package pitchboard.intake.rates;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.afterwards.Took;
import pitchboard.costing.Task;
import pitchboard.costing.Work;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.intake.yard.MoneyForms;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Money;

/** A whole file of what a job took. */
final class TookForm extends GroupForm<Took> {
    private static final Key<String> TOOK = Key.needed("took", Forms.words(80, "Stair to the loft"), "what was built");
    static final Key<Currency> CURRENCY =
            Key.needed("currency", MoneyForms.currency(), "what all amounts are counted in; the rates', too");
    private static final Key<Optional<String>> INPUTS = Key.open(
            "inputs",
            Forms.words(9, "DD7D-8DYT"),
            "what the quote has in its box `inputs`; another quote than that is told",
            "any quote will do");
    private static final Key<List<Took.Worked>> HOURS = Key.defaulting(
            "hours",
            Forms.list(new WorkedForm(), 1, 1000),
            "that were worked, each behind a dash",
            "none were noted",
            units -> List.of());
    private static final Key<List<Work>> DONE = Key.defaulting(
            "done",
            Forms.list(new DoneForm(), 1, 60),
            "how much there was of a task, where it was not as counted; each behind a dash",
            "as counted",
            units -> List.of());

    private final Key<Optional<Money>> paid;
    private final Key<List<Took.Spent>> costs;

    /** @param currency read before anything else, so that an amount in another can be refused in its place */
    TookForm(Currency currency) {
        Form<Money> money = MoneyForms.amount(currency);
        paid = Key.open("paid", money, "what the customer paid, taxes in it", "the price of the quote");
        costs = Key.defaulting(
                "costs",
                Forms.list(new SpentForm(money), 1, 1000),
                "that were paid, each behind a dash",
                "none were noted",
                units -> List.of());
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(TOOK, CURRENCY, INPUTS, paid, HOURS, costs, DONE);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a file of what a job took: lines such as `took: Stair to the loft`, `hours:` and `costs:`";
    }

    @Override
    protected Took read(Fields in) {
        Map<Task, Ratio> done = new EnumMap<>(Task.class);
        List<Work> said = in.get(DONE);
        said.forEach(work -> done.put(work.task(), work.times()));
        if (in.areSound(DONE) && done.size() < said.size()) {
            in.refuse(DONE, "each task once");
        }
        return new Took(
                in.get(TOOK), in.get(CURRENCY), in.get(INPUTS), in.get(paid), in.get(HOURS), in.get(costs), done);
    }

    @Override
    protected void write(Took value, Lines out) {
        out.put(TOOK, value.name());
        out.put(CURRENCY, value.currency());
        out.put(INPUTS, value.inputs());
        out.put(paid, value.paid());
        out.put(HOURS, value.worked());
        out.put(costs, value.spent());
        out.put(
                DONE,
                value.done().entrySet().stream()
                        .map(each -> new Work(each.getKey(), each.getValue()))
                        .toList());
    }
}
