package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.parts.StringerSpacing;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Hatch;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.tiling.Clip;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** One tread from the side and from the front: what it is made of, where it sits, what carries it. */
final class TreadSheet {
    private static final double NAME = 8;

    private final Subject subject;
    private final Stair stair;
    private final TreadMakeUp treads;
    private final Draft draft;
    private final Pencil pencil;

    private TreadSheet(Subject subject, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.treads = stair.brief().treads();
        this.draft = frame.draft("treads", "Treads and width");
        this.pencil = draft.pencil();
    }

    static List<Draft> of(Subject subject, Frame frame) {
        TreadSheet sheet = new TreadSheet(subject, frame);
        Box room = sheet.draft.room();
        sheet.step(room.topPart(room.height() * 0.6));
        sheet.width(room.bottomPart(room.height() * 0.38));
        return List.of(sheet.draft.scaled("as noted"));
    }

    private Dimensions dimensions() {
        return new Dimensions(pencil, subject::size);
    }

    private void name(Box box, String words) {
        pencil.text(Spot.of(box.centre().x(), box.bottom() - 1.5), words, Lettering.NAME, Align.CENTRE);
    }

    /** The first step and the next, in section. */
    private void step(Box room) {
        SideView side = subject.side();
        List<Point> extent = new ArrayList<>(side.treadBoards(1).stream()
                .flatMap(board -> board.corners().stream())
                .toList());
        extent.add(Point.of(stair.nosing(1).x(), stair.rise().times(2).plus(Length.inches(0, 1, 4))));
        extent.add(Point.of(
                stair.run().plus(stair.run().dividedBy(3)), stair.levelCut(1).minus(Length.inches(1))));
        Box clear = room.withoutBottom(NAME + 14).withoutTop(8).withoutLeft(30).withoutRight(50);
        View view = View.fitting(clear, extent, Scale.of(subject.tape()));
        EndDetail.Sketch sketch = new EndDetail.Sketch(draft, view, new Clip(view.around(extent)));
        sketch.area(PartId.STRINGER, Pen.CUT, Optional.of(Fill.LIGHT), side.stringer());
        for (int step = 1; step <= Math.min(2, stair.treads()); step++) {
            side.treadBoards(step).forEach(board -> sketch.section(PartId.TREAD, board));
        }
        for (int step = 1; step <= Math.min(2, stair.flight().risers()); step++) {
            side.riserBoard(step).ifPresent(board -> sketch.section(PartId.RISER, board));
        }
        stepSizes(view, extent);
        name(room, "A step from the side, " + view.scale().name());
    }

    private void stepSizes(View view, List<Point> extent) {
        Box box = view.around(extent);
        Length nosing = stair.nosing(1).x();
        Length underside = stair.levelCut(1);
        Length riserFace = stair.riserThickness().negated();
        List<Station> boards = new ArrayList<>();
        for (Outline board : subject.side().treadBoards(1)) {
            boards.add(view.level(Point.of(board.least(Point::x), underside)));
            boards.add(view.level(Point.of(board.greatest(Point::x), underside)));
        }
        double below = view.at(nosing, underside).y();
        dimensions().level(below + 9, boards);
        if (!stair.projection().isZero()) {
            dimensions()
                    .level(
                            below + 18,
                            view.level(Point.of(nosing, underside)),
                            view.level(Point.of(riserFace, underside)));
        }
        if (stair.treads() > 1) {
            dimensions().level(box.top() - 3, view.level(stair.nosing(1)), view.level(stair.nosing(2)));
            dimensions().plumb(box.left() - 6, view.plumb(stair.nosing(1)), view.plumb(stair.nosing(2)));
        }
        dimensions().plumb(box.left() - 16, view.plumb(Point.of(nosing, underside)), view.plumb(stair.nosing(1)));
        stepNotes(box);
    }

    private void stepNotes(Box box) {
        String made = treads.boards() == 1
                ? "each tread is one board"
                : "each tread is " + treads.boards() + " boards with a gap of " + subject.size(treads.gap());
        String words = "• " + made + "\n• nosing projection " + subject.size(stair.projection()) + "\n• a run of "
                + subject.size(stair.run()) + " from nosing to nosing\n• between the treads "
                + subject.size(stair.openingBetweenTreads());
        pencil.paragraph(Spot.of(box.right() + 12, box.top() + 4), 62, words, Lettering.NOTE);
    }

    /** A tread from the front, on its stringers. */
    private void width(Box room) {
        Length across = stair.brief().width();
        Length thickness = treads.thickness();
        Length shown = Length.inches(5);
        List<Point> extent = List.of(Point.of(Length.ZERO, shown.negated()), Point.of(across, thickness));
        Box clear = room.withoutBottom(NAME + 1).withoutTop(18).withoutLeft(20).withoutRight(20);
        View view = View.fitting(clear, extent, Scale.of(subject.tape()));
        Pencil tread = draft.pencil(SidePicture.ref(PartId.TREAD));
        tread.outline(
                Pen.OUTLINE, Fill.WHITE, view.at(SideView.rectangle(Length.ZERO, Length.ZERO, across, thickness)));
        stringers(view, shown);
        List<Station> middles = new ArrayList<>();
        middles.add(Station.of(Length.ZERO, view.at(Length.ZERO, thickness)));
        StringerSpacing.of(stair.brief())
                .middles()
                .forEach(middle -> middles.add(Station.of(middle, view.at(middle, thickness))));
        middles.add(Station.of(across, view.at(across, thickness)));
        dimensions().levelWithOverall(view.at(Length.ZERO, thickness).y() - 7, middles);
        name(room, "A tread from the front, " + view.scale().name());
    }

    private void stringers(View view, Length shown) {
        Length half = stair.brief().stringers().stock().thickness().dividedBy(2);
        Pencil wood = draft.pencil(SidePicture.ref(PartId.STRINGER));
        for (Length middle : StringerSpacing.of(stair.brief()).middles()) {
            List<Spot> stringer =
                    view.at(SideView.rectangle(middle.minus(half), shown.negated(), middle.plus(half), Length.ZERO));
            new Hatch(wood).inside(stringer, Material.TIMBER_ACROSS);
            wood.outline(Pen.OUTLINE, stringer);
            Spot foot = view.at(middle, shown.negated());
            pencil.line(Pen.CENTRE, view.at(middle, treads.thickness()).shifted(0, -3), foot.shifted(0, 3));
        }
    }
}
