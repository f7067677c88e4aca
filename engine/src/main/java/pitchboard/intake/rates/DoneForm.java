package pitchboard.intake.rates;

import java.util.List;
import pitchboard.costing.Task;
import pitchboard.costing.Work;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Ratio;

/** How much there really was of a task. */
final class DoneForm extends GroupForm<Work> {
    private static final Key<Task> TASK = Key.needed("task", HoursForm.tasks(), "what was done");
    private static final Key<Ratio> TIMES =
            Key.needed("times", Numbers.above("a number", "12"), "how often, or how many feet");

    @Override
    public List<Key<?>> keys() {
        return List.of(TASK, TIMES);
    }

    @Override
    protected Work read(Fields in) {
        return new Work(in.get(TASK), in.get(TIMES));
    }

    @Override
    protected void write(Work value, Lines out) {
        out.put(TASK, value.task());
        out.put(TIMES, value.times());
    }
}
