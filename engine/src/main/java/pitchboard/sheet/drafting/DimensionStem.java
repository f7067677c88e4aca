package pitchboard.sheet.drafting;

import java.util.List;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.TextBox;

/** The line of one gap, lengthened under a label beside it, or joined by a leader to a label off it. */
record DimensionStem(PartRef of, DimensionLine line, DimensionLabels labels, Mark.Text label, boolean fits) {
    private static final double TO_LABEL = 0.7;

    List<Mark> strokes(Spot from, Spot to, boolean isFirst, boolean isLast) {
        double before = isFirst ? DimensionLine.OVERRUN : 0;
        double after = isLast ? DimensionLine.OVERRUN : 0;
        if (fits) {
            return List.of(line.between(of, from, to, before, after));
        }
        if (labels.isBeside(label, from, to)) {
            boolean atEnd = line.along(TextBox.of(label).box().centre()) > line.along(to);
            return List.of(line.between(of, from, to, atEnd ? before : labels.reach(), atEnd ? labels.reach() : after));
        }
        return List.of(line.between(of, from, to, before, after), leader(from, to));
    }

    /** From the middle of the gap to the near side of the label. */
    private Mark leader(Spot from, Spot to) {
        Spot start = line.foot(from).midTo(line.foot(to));
        Quad box = TextBox.of(label);
        Spot below = box.corners().get(0).midTo(box.corners().get(1));
        Spot above = box.corners().get(2).midTo(box.corners().get(3));
        Spot end = start.distanceTo(below) < start.distanceTo(above) ? below : above;
        double length = Math.max(0, start.distanceTo(end) - TO_LABEL);
        return new Mark.Line(of, List.of(start, start.toward(start.directionTo(end), length)), Pen.DIMENSION);
    }
}
