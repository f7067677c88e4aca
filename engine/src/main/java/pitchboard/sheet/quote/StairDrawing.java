package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.parts.PartId;
import pitchboard.parts.RailView;
import pitchboard.plane.Point;
import pitchboard.railing.GuardLayout;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.rails.PlanPicture;
import pitchboard.sheet.rails.PlanSurroundings;
import pitchboard.sheet.subject.RailPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** A stair from the side and from above, small, with the three sizes a customer asks for: height, length and width. */
final class StairDrawing {
    private static final double BESIDE = 17;
    private static final double BELOW = 9;
    private static final double NAME = 4;
    private static final double LARGEST = 1.0 / 16;
    private static final double APART = 6;

    private final Draft draft;
    /** The stair alone, in the pens of a full sheet. */
    private final Draft full;

    private final Stair stair;

    private StairDrawing(Draft draft, Stair stair) {
        this.draft = draft;
        this.full = new Draft("", "", draft.room());
        this.stair = stair;
    }

    /** Draws it into the box, the two views at one scale, at its top. */
    static void draw(Draft draft, Stair stair, Box box) {
        new StairDrawing(draft, stair).draw(box);
    }

    /** Draws it from the side alone, in the middle of the box's foot. */
    static void side(Draft draft, Stair stair, Box box) {
        StairDrawing drawing = new StairDrawing(draft, stair);
        Box life = View.of(Scale.TRUE_SIZE, Spot.of(0, 0)).around(drawing.sideExtent());
        double across = box.width() - BESIDE;
        double down = box.height() - NAME - BELOW;
        double factor = Math.min(LARGEST, Math.min(across / life.width(), down / life.height()));
        View view = View.of(new Scale("", factor), Spot.of(0, 0));
        double top = box.bottom() - NAME - BELOW - life.height() * factor;
        drawing.fromTheSide(view, Spot.of(box.left() + across / 2, top));
        drawing.ink();
    }

    private void draw(Box box) {
        View life = View.of(Scale.TRUE_SIZE, Spot.of(0, 0));
        Box side = life.around(sideExtent());
        Box plan = life.around(new PlanSurroundings(stair).extent());
        double across = box.width() - BESIDE;
        double down = box.height() - 2 * NAME - 2 * BELOW - APART;
        double factor = Math.min(
                LARGEST,
                Math.min(across / Math.max(side.width(), plan.width()), down / (side.height() + plan.height())));
        View view = View.of(new Scale("", factor), Spot.of(0, 0));
        double middle = box.left() + across / 2;
        double bottom = fromTheSide(view, Spot.of(middle, box.top()));
        fromAbove(view, Spot.of(middle, bottom + APART));
        ink();
    }

    private void ink() {
        full.marks().forEach(mark -> draft.add(fine(mark)));
    }

    /** An inch of wood is no wider here than the outline of a full sheet. */
    private static Mark fine(Mark mark) {
        if (mark instanceof Mark.Line line) {
            return new Mark.Line(line.of(), line.spots(), fine(line.pen()));
        }
        return mark instanceof Mark.Shape shape
                ? new Mark.Shape(shape.of(), shape.spots(), shape.pen().map(StairDrawing::fine), shape.fill())
                : mark;
    }

    private static Pen fine(Pen pen) {
        return switch (pen) {
            case CUT -> Pen.PENCIL;
            case OUTLINE -> Pen.THIN;
            default -> pen;
        };
    }

    private List<Point> sideExtent() {
        List<Point> points = new ArrayList<>(SidePicture.extent(stair));
        points.addAll(RailPicture.extent(stair));
        points.addAll(RailPicture.handrailExtent(stair));
        return points;
    }

    private static View hung(View view, List<Point> extent, Spot topMiddle) {
        Box drawn = view.around(extent);
        return view.movedBy(topMiddle.x() - drawn.centre().x(), topMiddle.y() - drawn.top());
    }

    /** @return how far down it reaches */
    private double fromTheSide(View scaled, Spot topMiddle) {
        View view = hung(scaled, sideExtent(), topMiddle);
        boolean before = stair.site().rightSide() == Side.OPEN;
        if (!before) {
            rails(view);
        }
        new SidePicture(full, view, stair).draw();
        if (before) {
            rails(view);
        }
        Box drawn = view.around(sideExtent());
        Point floor = Point.of(stair.headerFace(), stair.flight().totalRise());
        Point foot = Point.of(stair.headerFace(), Length.ZERO);
        dimensions()
                .plumb(
                        drawn.right() + 6,
                        Station.of(
                                foot.y(), Spot.of(drawn.right(), view.at(foot).y())),
                        Station.of(
                                floor.y(), Spot.of(drawn.right(), view.at(floor).y())));
        Point nosing = stair.nosing(1);
        dimensions()
                .level(
                        drawn.bottom() + 6,
                        Station.of(nosing.x(), Spot.of(view.at(nosing).x(), drawn.bottom())),
                        Station.of(foot.x(), Spot.of(view.at(foot).x(), drawn.bottom())));
        return name(drawn, drawn.bottom() + BELOW, "from the side");
    }

    /** What is drawn later covers what is there: rails on the far side come before the stair, near ones after it. */
    private void rails(View view) {
        GuardLayout.find(stair).ifPresent(guard -> new RailPicture(full, view, guard).draw());
        RailView.handrail(stair)
                .ifPresent(rail ->
                        full.pencil(SidePicture.ref(PartId.HANDRAIL)).outline(Pen.THIN, Fill.WHITE, view.at(rail)));
    }

    private double fromAbove(View scaled, Spot topMiddle) {
        View view = hung(scaled, new PlanSurroundings(stair).extent(), topMiddle);
        PlanPicture.draw(full, view, stair);
        Box drawn = view.around(new PlanSurroundings(stair).extent());
        Length end = stair.headerFace();
        dimensions()
                .plumb(
                        drawn.right() + 9,
                        Station.of(
                                Length.ZERO,
                                Spot.of(drawn.right(), view.at(end, Length.ZERO).y())),
                        Station.of(
                                stair.brief().width(),
                                Spot.of(
                                        drawn.right(),
                                        view.at(end, stair.brief().width()).y())));
        return name(drawn, drawn.bottom() + 2, "from above");
    }

    private double name(Box drawn, double top, String words) {
        double baseline = top + Lettering.NOTE.capHeight();
        draft.pencil().text(Spot.of(drawn.centre().x(), baseline), words, Lettering.NOTE, Align.CENTRE);
        return baseline;
    }

    private Dimensions dimensions() {
        return new Dimensions(
                draft.pencil(),
                length -> TapeWriter.write(length, stair.brief().tape(), Tape.Style.PRINTED),
                Lettering.NOTE);
    }
}
