package pitchboard.sheet.work;

import java.util.List;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** What to do in which order, and what to measure before going on. */
public final class OrderSheet {
    private OrderSheet() {}

    public static List<Draft> of(Subject subject, Frame frame) {
        Table table = Table.of(
                        Column.checkBox("", 14),
                        Column.rest("do"),
                        Column.left("check before going on", 100).bold())
                .lettered(Lettering.ofCapitals(2.6));
        int number = 1;
        for (OrderOfWork.Stage stage : new OrderOfWork(subject).stages()) {
            table.heading(stage.name());
            for (OrderOfWork.Task task : stage.tasks()) {
                table.row(String.valueOf(number), task.todo(), task.check());
                number++;
            }
        }
        return table.over(page -> frame.draft("order", page, "Order of work"));
    }
}
