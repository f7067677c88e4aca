package pitchboard.sheet.rails;

import java.util.List;
import pitchboard.brief.Handrail;
import pitchboard.brief.Section;
import pitchboard.measure.Length;
import pitchboard.parts.HandrailParts;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** The section that a hand closes on, cut square to its length, at true size where that fits. */
record GripPicture(Subject subject, Handrail.Grip grip) {
    private static final double TALLEST = 44;
    private static final double HEADING = 5;
    private static final double DIMENSIONS = 12;

    private Section section() {
        return HandrailParts.section(grip);
    }

    private Scale scale() {
        double size =
                Math.max(section().thickness().approxMm(), section().width().approxMm());
        return size <= TALLEST ? Scale.TRUE_SIZE : Scale.oneTo(size <= 2 * TALLEST ? 2 : 8);
    }

    double height() {
        return HEADING + DIMENSIONS + section().thickness().approxMm() * scale().factor() + 4;
    }

    /** Returns where it ends. */
    double draw(Draft draft, Box room) {
        Pencil pencil = draft.pencil(SidePicture.ref(PartId.HANDRAIL));
        pencil.text(room.topLeft().shifted(0, 3), "Section, " + scale().name(), Lettering.HEAD, Align.LEFT);
        double wide = section().width().approxMm() * scale().factor();
        double tall = section().thickness().approxMm() * scale().factor();
        Spot corner = Spot.of(room.left() + (room.width() - wide) / 2, room.top() + HEADING + tall);
        View view = View.of(scale(), corner);
        outline(pencil, view);
        Point far = Point.of(section().width(), section().thickness());
        Dimensions dimensions = new Dimensions(pencil, subject::size);
        dimensions.level(corner.y() + 7, view.level(Point.of(Length.ZERO, Length.ZERO)), view.level(far));
        dimensions.plumb(corner.x() + wide + 8, view.plumb(Point.of(Length.ZERO, Length.ZERO)), view.plumb(far));
        return room.top() + height();
    }

    private void outline(Pencil pencil, View view) {
        Length width = section().width();
        Length height = section().thickness();
        if (grip instanceof Handrail.Grip.Round) {
            pencil.circle(Pen.OUTLINE, view.at(width.dividedBy(2), height.dividedBy(2)), view.onPaper(width) / 2);
        } else if (grip instanceof Handrail.Grip.Recessed recessed) {
            pencil.outline(Pen.OUTLINE, view.at(recessed(recessed)));
        } else {
            pencil.outline(
                    Pen.OUTLINE,
                    view.at(List.of(
                            Point.of(Length.ZERO, Length.ZERO),
                            Point.of(width, Length.ZERO),
                            Point.of(width, height),
                            Point.of(Length.ZERO, height))));
        }
    }

    /** From the lower left corner round: the recesses on both sides, and the narrower top above them. */
    private static List<Point> recessed(Handrail.Grip.Recessed rail) {
        Length width = rail.section().width();
        Length height = rail.section().height();
        Handrail.Grip.Recess recess = rail.recess();
        Length inset = width.minus(rail.topWidth()).dividedBy(2);
        Length upper = height.minus(recess.start());
        Length lower = upper.minus(recess.height());
        Length in = recess.depth();
        return List.of(
                Point.of(Length.ZERO, Length.ZERO),
                Point.of(width, Length.ZERO),
                Point.of(width, lower),
                Point.of(width.minus(in), lower),
                Point.of(width.minus(in), upper),
                Point.of(width.minus(inset), upper),
                Point.of(width.minus(inset), height),
                Point.of(inset, height),
                Point.of(inset, upper),
                Point.of(in, upper),
                Point.of(in, lower),
                Point.of(Length.ZERO, lower));
    }
}
