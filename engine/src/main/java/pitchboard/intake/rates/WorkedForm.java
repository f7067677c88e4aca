package pitchboard.intake.rates;

import java.util.List;
import java.util.Optional;
import pitchboard.afterwards.Took;
import pitchboard.costing.Task;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.intake.yard.MoneyForms;
import pitchboard.measure.Ratio;
import pitchboard.money.Day;

/** Hours that were worked on one day. */
final class WorkedForm extends GroupForm<Took.Worked> {
    private static final Key<Day> DATE = Key.needed("date", MoneyForms.day(), "when");
    private static final Key<Task> TASK = Key.needed("task", HoursForm.tasks(), "what was done");
    private static final Key<Ratio> HOURS = Key.needed("hours", Numbers.above("hours", "1.5"), "by the clock");
    private static final Key<Optional<Integer>> PEOPLE =
            Key.open("people", Forms.count(1, 20, 1), "how many worked", "the whole crew");
    private static final Key<String> WHO =
            Key.defaulting("who", Forms.words(60, "the younger one"), "who it was", "nothing", units -> "");

    @Override
    public List<Key<?>> keys() {
        return List.of(DATE, TASK, HOURS, PEOPLE, WHO);
    }

    @Override
    protected Took.Worked read(Fields in) {
        return new Took.Worked(in.get(DATE), in.get(TASK), in.get(HOURS), in.get(PEOPLE), in.get(WHO));
    }

    @Override
    protected void write(Took.Worked value, Lines out) {
        out.put(DATE, value.day());
        out.put(TASK, value.task());
        out.put(HOURS, value.hours());
        out.put(PEOPLE, value.people());
        out.put(WHO, value.who());
    }
}
