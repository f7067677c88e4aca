package pitchboard.sheet.papers;

import java.util.List;
import pitchboard.parts.Part;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** Every piece: its mark, how many, how big, what for. */
final class PartsSheet {
    private PartsSheet() {}

    static List<Draft> of(Subject subject, Frame frame) {
        Table table = Table.of(
                        Column.checkBox("mark", 20),
                        Column.right("pieces", 18).bold(),
                        Column.left("name", 42),
                        Column.right("thickness", 24),
                        Column.right("width", 26),
                        Column.right("length", 30).bold(),
                        Column.rest("what for"))
                .lettered(Lettering.ofCapitals(2.7));
        for (Part part : subject.parts()) {
            table.row(
                    SidePicture.ref(part.id()),
                    List.of(
                            part.id().mark(),
                            String.valueOf(part.count()),
                            part.name(),
                            subject.size(part.thickness()),
                            subject.size(part.width()),
                            subject.size(part.length()),
                            part.purpose()));
        }
        table.heading("Sizes are as the wood measures. A stringer's length is the board it needs, trimming at both ends"
                + " included.");
        return table.over(page -> frame.draft("parts", page, "Pieces"));
    }
}
