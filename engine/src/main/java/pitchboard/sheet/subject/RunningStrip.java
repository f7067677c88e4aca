package pitchboard.sheet.subject;

import java.util.List;
import java.util.function.Function;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/**
 * Pieces along a straight piece of wood, and the running marks of their near edges from the datum at its left end.
 *
 * @param length of the piece that is marked
 * @param width of every piece along it
 */
public record RunningStrip(Subject subject, PartId id, Length length, Length width, List<Marked> marks) {
    private static final double LABELS = 20;
    private static final double TALLEST = 22;
    public static final double HEIGHT = LABELS + TALLEST + 8;

    /** Draws it at the top of the room, as large as it fits; returns the scale. */
    public Scale draw(Draft draft, Box room) {
        Box box = new Box(room.left() + 6, room.top() + LABELS, room.width() - 12, TALLEST);
        View view = View.fitting(box, List.of(Point.of(Length.ZERO, Length.ZERO), corner()), Scale.of(subject.tape()));
        Pencil pencil = draft.pencil(SidePicture.ref(id));
        marks.stream()
                .map(mark -> SideView.rectangle(
                        mark.exact(), Length.ZERO, mark.exact().plus(width), height()))
                .forEach(piece -> pencil.outline(Pen.OUTLINE, Fill.LIGHT, view.at(piece)));
        Function<Length, Spot> edge = x -> view.at(x, height());
        pencil.outline(Pen.THIN, view.at(SideView.rectangle(Length.ZERO, Length.ZERO, length, height())));
        Spot datum = edge.apply(Length.ZERO);
        pencil.line(Pen.CENTRE, datum.shifted(0, -3), datum.shifted(0, view.onPaper(height()) + 5));
        pencil.text(
                Spot.of(datum.x() + 1.2, datum.y() + view.onPaper(height()) + 5), "datum", Lettering.HEAD, Align.LEFT);
        labels(pencil, edge);
        return view.scale();
    }

    private Point corner() {
        return Point.of(length, height());
    }

    /** As tall as a few of the pieces are wide. */
    private Length height() {
        return Length.min(width.times(2), length);
    }

    private void labels(Pencil pencil, Function<Length, Spot> edge) {
        double last = Double.NEGATIVE_INFINITY;
        for (Marked mark : marks) {
            Spot on = edge.apply(mark.exact());
            pencil.line(Pen.PENCIL, on, on.shifted(0, -3.2));
            double x = Math.max(on.x(), last + Lettering.NOTE.lineHeight() * 0.86);
            last = x;
            Spot at = Spot.of(x + Lettering.NOTE.capHeight() / 2, on.y() - 4.4);
            if (at.x() < pencil.draft().room().right() - 1) {
                pencil.text(at, 90, subject.running(mark.line()), Lettering.NOTE, Align.LEFT);
            }
        }
    }
}
