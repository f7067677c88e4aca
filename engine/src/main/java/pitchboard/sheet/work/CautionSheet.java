package pitchboard.sheet.work;

import java.util.List;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** What can hurt, and who decides. */
public final class CautionSheet {
    private CautionSheet() {}

    public static List<Draft> of(Subject subject, Frame frame) {
        Table table = Table.of(
                        Column.rest(""), Column.left("where it comes from", 76).small())
                .lettered(Lettering.ofCapitals(2.6));
        for (Cautions.Group group : Cautions.groups(subject.stair())) {
            table.heading(group.name());
            group.cautions().forEach(caution -> table.row(caution.words(), caution.source()));
        }
        return table.over(page -> frame.draft("cautions", page, "Cautions"));
    }
}
