package pitchboard.sheet.pictures;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.railing.GuardLayout;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Spot;
import pitchboard.sheet.subject.OverheadPicture;
import pitchboard.sheet.subject.RailPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.tiling.Clip;
import pitchboard.site.Overhead;
import pitchboard.stair.Stair;

/** The flight from the side, to scale, with the sizes that decide it. */
final class StairPicture {
    /** How thick the edge of what is overhead is shown, and where the page cuts it off. */
    private static final double EDGE = 4;

    private final Subject subject;
    private final Stair stair;
    private final StairView place;
    private final Canvas canvas;

    private StairPicture(Subject subject, StairView place) {
        this.subject = subject;
        this.stair = subject.stair();
        this.place = place;
        this.canvas = new Canvas("stair", "The stair from the side", place.page());
    }

    static Picture of(Subject subject, StairView place) {
        StairPicture picture = new StairPicture(subject, place);
        picture.draw();
        return picture.canvas.picture();
    }

    private void draw() {
        SidePicture side = new SidePicture(canvas.draft(), place.view(), stair, place.around());
        canvas.part("ground", side::ground);
        canvas.part("header", side::header);
        canvas.part("floor", side::floor);
        canvas.part(PartId.SUPPORT.mark(), side::support);
        canvas.part(PartId.STRINGER.mark(), side::stringer);
        canvas.part(PartId.RISER.mark(), side::risers);
        canvas.part(PartId.TREAD.mark(), side::treads);
        canvas.part(PartId.HEAD_BOARD.mark(), side::headBoard);
        canvas.part(PartId.FOOT_BOARD.mark(), side::footBoard);
        canvas.part("overhead", () -> stair.site().overheads().forEach(this::overhead));
        GuardLayout.find(stair).ifPresent(this::guard);
        canvas.part("rail", () -> place.railLine().ifPresent(this::line));
        canvas.part("guard", () -> place.guardLine().ifPresent(this::line));
        new StairSizes(subject, place, canvas).draw();
    }

    /** Piece by piece, where it is said what it is built of. */
    private void guard(GuardLayout guard) {
        RailPicture rails = new RailPicture(canvas.draft(), place.view(), guard);
        canvas.part(PartId.INFILL.mark(), rails::infill);
        canvas.part(PartId.BOTTOM_RAIL.mark(), rails::rails);
        canvas.part(PartId.POST.mark(), rails::posts);
    }

    private void line(List<Point> ends) {
        canvas.pencil().line(Pen.GHOST, place.view().at(ends));
    }

    /** The near edge and the underside of what is near enough above to be seen. */
    private void overhead(Overhead overhead) {
        Point far = OverheadPicture.farEdge(stair, overhead);
        Length near = stair.headerFace().minus(overhead.from());
        Spot left = place.view().at(far);
        Spot right = place.view().at(near, far.y());
        Clip seen = new Clip(place.page().inset(1));
        List<Spot> edge = List.of(left, right, right.shifted(0, -EDGE));
        if (left.y() > place.body().top() - 1) {
            seen.line(edge).forEach(stretch -> canvas.pencil().line(Pen.OUTLINE, stretch));
            seen.line(List.of(right.shifted(0, -EDGE), left.shifted(0, -EDGE)))
                    .forEach(stretch -> canvas.pencil().line(Pen.GHOST, stretch));
        }
    }
}
