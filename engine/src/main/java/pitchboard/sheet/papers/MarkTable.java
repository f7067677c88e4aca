package pitchboard.sheet.papers;

import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.RunningMark;
import pitchboard.parts.StoryPole;
import pitchboard.sheet.Box;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** The running marks of a stringer and the heights on the pole, each rounded once from its own exact place. */
final class MarkTable {
    static final double WIDTH = 92;

    private final Subject subject;
    private final Draft draft;

    MarkTable(Subject subject, Draft draft) {
        this.subject = subject;
        this.draft = draft;
    }

    void draw(Box room) {
        Table table = Table.of(
                        Column.checkBox("corner", 17),
                        Column.right("from datum", 25).bold(),
                        Column.right("off by", 15).small(),
                        Column.right("height on pole", 21).bold(),
                        Column.right("off by", 14).small())
                .lettered(lettering(room));
        List<RunningMark> marks = subject.layout().marks();
        StoryPole pole = StoryPole.of(subject.stair());
        for (RunningMark mark : marks) {
            boolean hasHeight = mark.step() <= pole.heights().size();
            table.row(
                    PartRef.NONE,
                    List.of(
                            mark.step() == marks.size() ? "head" : String.valueOf(mark.step()),
                            subject.running(mark.at().line()),
                            offBy(mark.at()),
                            hasHeight
                                    ? subject.running(
                                            pole.heights().get(mark.step() - 1).line())
                                    : "",
                            hasHeight ? offBy(pole.heights().get(mark.step() - 1)) : ""));
        }
        table.draw(draft, room, 0);
    }

    /** Long flights get smaller rows, so that all marks stand on the one sheet. */
    private Lettering lettering(Box room) {
        double rowHeight = room.height() / (subject.layout().marks().size() + 2);
        double capitals = Math.min(2.2, Math.max(1.5, rowHeight - 2.6));
        return Lettering.ofCapitals(capitals);
    }

    /** How far the tape line is from the exact place, in thousandths of an inch or tenths of a millimetre. */
    private String offBy(Marked marked) {
        Length givenUp = marked.givenUp();
        double mm = givenUp.approxMm();
        String number = subject.tape().isInches() ? Decimals.fixed(mm / 25.4, 3) : Decimals.fixed(mm, 1);
        return number.startsWith("-") ? "−" + number.substring(1) : (givenUp.isPositive() ? "+" + number : number);
    }
}
