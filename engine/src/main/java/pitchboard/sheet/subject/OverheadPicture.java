package pitchboard.sheet.subject;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Notes;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TypeLine;
import pitchboard.sheet.type.Typesetter;
import pitchboard.site.Overhead;
import pitchboard.stair.Headroom;
import pitchboard.stair.Stair;

/** What is above the flight, and the room it leaves; what is far above is written instead of drawn. */
public record OverheadPicture(Subject subject, View view) {
    private static final int FAR = 5;

    /** The underside at the tightest place, when it is near enough to be drawn. */
    public static Optional<Point> drawnUnderside(Stair stair) {
        return stair.headroom()
                .map(OverheadPicture::underside)
                .filter(point -> point.y()
                        .isLessThan(stair.flight().totalRise().plus(stair.rise().times(FAR))));
    }

    private static Point underside(Headroom headroom) {
        return headroom.at().shifted(Length.ZERO, headroom.clear());
    }

    private Stair stair() {
        return subject.stair();
    }

    /** The edges away from the head of all that is drawn. */
    public List<Point> farEdges() {
        return drawnUnderside(stair()).isEmpty()
                ? List.of()
                : stair().site().overheads().stream().map(this::farEdge).toList();
    }

    public void draw(Draft draft) {
        stair().headroom().ifPresent(tightest -> {
            if (drawnUnderside(stair()).isPresent()) {
                stair().site().overheads().forEach(overhead -> draw(draft, overhead));
                new Dimensions(draft.pencil(), subject::size)
                        .plumb(view.at(tightest.at()).x(), view.plumb(tightest.at()), view.plumb(underside(tightest)));
                // Names come last, so that they find a place clear of the headroom's dimension.
                stair().site().overheads().forEach(overhead -> name(draft, overhead));
            } else {
                write(draft, tightest);
            }
        });
    }

    private void write(Draft draft, Headroom tightest) {
        Spot nosing = view.at(tightest.at());
        new Notes(draft.pencil(), 50)
                .onEdge(
                        nosing,
                        List.of(
                                nosing.shifted(-16, -26),
                                nosing.shifted(-22, -34),
                                nosing.shifted(12, -10),
                                nosing.shifted(-14, -10)),
                        "headroom here " + subject.size(tightest.clear()) + ", under "
                                + tightest.overhead().name());
    }

    private void draw(Draft draft, Overhead overhead) {
        Pencil pencil = draft.pencil();
        Spot left = view.at(farEdge(overhead));
        Spot right = nearEdge(overhead);
        pencil.line(Pen.OUTLINE, left, right, right.shifted(0, -5));
        pencil.line(Pen.GHOST, right.shifted(0, -5), left.shifted(0, -5));
    }

    private void name(Draft draft, Overhead overhead) {
        Pencil pencil = draft.pencil();
        Spot left = view.at(farEdge(overhead));
        Spot right = nearEdge(overhead);
        TypeLine name = Typesetter.line(overhead.name(), Lettering.NOTE);
        draft.add(draft.firstFree(List.of(
                name.at(pencil.of(), left.shifted(1, -1.5), 0, Align.LEFT),
                name.at(pencil.of(), left.shifted(1, 3.5), 0, Align.LEFT),
                name.at(pencil.of(), right.shifted(2, -1.5), 0, Align.LEFT))));
    }

    private Spot nearEdge(Overhead overhead) {
        return view.at(
                stair().headerFace().minus(overhead.from()), farEdge(overhead).y());
    }

    /** The edge away from the head; what goes on past the foot is broken off. */
    private Point farEdge(Overhead overhead) {
        return farEdge(stair(), overhead);
    }

    /** Where the underside ends away from the head, or is broken off when it goes on past the foot. */
    public static Point farEdge(Stair stair, Overhead overhead) {
        Length near = stair.headerFace().minus(overhead.from());
        Length far = overhead.to().map(to -> stair.headerFace().minus(to)).orElse(near.minus(Length.inches(30)));
        Length shown = Length.max(far, stair.nosing(1).x().minus(Length.inches(12)));
        return Point.of(shown, overhead.underside().value().minus(stair.site().lowerFinish()));
    }
}
