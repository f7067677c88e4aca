package pitchboard.sheet.subject;

import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.parts.StoryPole;
import pitchboard.parts.StringerLayout;
import pitchboard.sheet.Box;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** The running marks of a stringer, and the heights on the pole, each rounded once from its own exact place. */
public final class MarkTable {
    private static final int HEAD_AND_BOTTOM_EDGE_ROWS = 4;
    private static final double MOST_CAPITALS = 3;
    private static final double LEAST_CAPITALS = 1.5;
    private static final double ROW_PADDING = 2.7;

    private final Subject subject;
    private final StringerLayout layout;

    public MarkTable(Subject subject) {
        this.subject = subject;
        this.layout = subject.layout();
    }

    public void marks(Draft draft, Box room) {
        Table table = Table.of(
                        Column.checkBox("mark", 34),
                        Column.right("from datum", 34).bold(),
                        Column.right("off by", 18).small())
                .lettered(lettering(room, layout.marks().size()));
        table.heading("On the top edge: corners of the steps");
        layout.marks().forEach(mark -> row(table, "corner " + mark.step(), mark.at()));
        table.heading("On the bottom edge");
        row(table, "heel of the foot", layout.heelMark());
        row(table, "end of the head", layout.headMark());
        table.draw(draft, room, 0);
    }

    public void pole(Draft draft, Box room) {
        List<Marked> heights = StoryPole.of(subject.stair()).heights();
        Table table = Table.of(
                        Column.checkBox("tread top", 28),
                        Column.right("height", 30).bold(),
                        Column.right("off by", 18).small())
                .lettered(lettering(room, heights.size()));
        table.heading("On the pole, from the finished surface");
        for (int i = 0; i < heights.size(); i++) {
            row(table, i + 1 == subject.stair().flight().risers() ? "floor" : String.valueOf(i + 1), heights.get(i));
        }
        table.draw(draft, room, 0);
    }

    private void row(Table table, String name, Marked mark) {
        table.row(SidePicture.ref(PartId.STRINGER), List.of(name, subject.running(mark.line()), offBy(subject, mark)));
    }

    /** Long flights get smaller rows, so that all marks stand on the one sheet. */
    private static Lettering lettering(Box room, int marks) {
        double rowHeight = room.height() / (marks + HEAD_AND_BOTTOM_EDGE_ROWS + 1.5);
        return Lettering.ofCapitals(Math.min(MOST_CAPITALS, Math.max(LEAST_CAPITALS, rowHeight - ROW_PADDING)));
    }

    /** How far the tape line is from the exact place, in thousandths of an inch or tenths of a millimetre. */
    public static String offBy(Subject subject, Marked marked) {
        Length givenUp = marked.givenUp();
        double mm = givenUp.approxMm();
        String number = subject.tape().isInches() ? Decimals.fixed(mm / 25.4, 3) : Decimals.fixed(mm, 1);
        return number.startsWith("-") ? "−" + number.substring(1) : (givenUp.isPositive() ? "+" + number : number);
    }
}
