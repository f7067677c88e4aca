package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TextBox;
import pitchboard.sheet.type.TypeLine;

/** Where the label of a dimension can stand, best place first. */
final class DimensionLabels {
    /** Clear space between a label and the line under it, and between a label and the ticks. */
    static final double ABOVE_LINE = 1.0;

    private static final double FROM_TICK = 1.2;
    private static final double BESIDE = 2.6;

    private final PartRef of;
    private final DimensionLine line;
    private final TypeLine words;
    private final double capHeight;

    DimensionLabels(PartRef of, DimensionLine line, TypeLine words, Lettering lettering) {
        this.of = of;
        this.line = line;
        this.words = words;
        this.capHeight = lettering.capHeight();
    }

    /** Whether the label has room between the ticks. */
    boolean fits(Spot from, Spot to) {
        return words.width() + 2 * FROM_TICK <= line.foot(from).distanceTo(line.foot(to));
    }

    /** Over the middle of the gap; under it when that is taken. */
    List<Mark.Text> inside(Spot from, Spot to) {
        Spot middle = line.foot(from).midTo(line.foot(to));
        return List.of(over(middle, ABOVE_LINE), over(middle, -ABOVE_LINE - capHeight));
    }

    /** Beside the last tick on the lengthened line, beside the first, then further and further off the line. */
    List<Mark.Text> outside(Spot from, Spot to, boolean isFirst, boolean isLast) {
        List<Mark.Text> places = new ArrayList<>();
        double way = line.foot(from).directionTo(line.foot(to));
        double reach = BESIDE + words.width() / 2;
        if (isLast) {
            places.add(over(line.foot(to).toward(way, reach), ABOVE_LINE));
        }
        if (isFirst) {
            places.add(over(line.foot(from).toward(way, -reach), ABOVE_LINE));
        }
        Spot middle = line.foot(from).midTo(line.foot(to));
        for (int step = 1; step <= 4; step++) {
            double off = ABOVE_LINE + step * capHeight * 1.6;
            places.add(over(middle, off));
            places.add(over(middle, -off - capHeight));
        }
        return places;
    }

    private Mark.Text over(Spot middle, double off) {
        double turn = line.labelTurn();
        return words.at(of, middle.toward(turn + 90, off), turn, Align.CENTRE);
    }

    /** How far a label beside the gap lies past the nearer tick, so that the line can be drawn under it. */
    double reach() {
        return BESIDE + words.width();
    }

    /** Whether a placed label stands over the line's lengthening rather than off the line. */
    boolean isBeside(Mark.Text label, Spot from, Spot to) {
        Spot middle = TextBox.of(label).box().centre();
        double along = line.along(middle);
        double start = line.along(from);
        double end = line.along(to);
        return along < Math.min(start, end) || along > Math.max(start, end);
    }
}
