package pitchboard.intake.rates;

import java.util.List;
import pitchboard.costing.Task;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Ratio;

/** The crew's own hours for one task. */
final class HoursForm extends GroupForm<HoursForm.Hours> {
    /** @param each hours of the whole crew, by the clock */
    record Hours(Task task, Ratio each) {}

    private static final Key<Task> TASK = Key.needed("task", tasks(), "what is done");
    private static final Key<Ratio> HOURS =
            Key.needed("hours", Numbers.from0("hours", "0.25"), "of the whole crew by the clock, for each");

    /** Any task, by its words. */
    static ChoiceForm<Task> tasks() {
        ChoiceForm<Task> tasks = ChoiceForm.of(Task.FIRST_STRINGER.words(), Task.FIRST_STRINGER);
        for (Task task : Task.values()) {
            tasks = tasks.or(task.words(), task);
        }
        return tasks;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(TASK, HOURS);
    }

    @Override
    protected Hours read(Fields in) {
        return new Hours(in.get(TASK), in.get(HOURS));
    }

    @Override
    protected void write(Hours value, Lines out) {
        out.put(TASK, value.task());
        out.put(HOURS, value.each());
    }
}
