package pitchboard.sheet.lessons;

import java.util.List;
import java.util.function.Consumer;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.pictures.Canvas;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.tiling.Pane;
import pitchboard.stair.Stair;

/** What a small picture shows of a sample stair, cut off at the picture's edges. */
final class Window {
    private final Canvas canvas;
    private final Stair stair;
    private final View view;
    private final SidePicture.Surroundings around;

    /**
     * Looks at one place.
     *
     * @param middle what lies in the middle of the picture
     * @param across how much is seen from left to right
     */
    Window(String title, Sample sample, Point middle, Length across) {
        this.canvas = Lesson.canvas(title);
        this.stair = sample.stair();
        this.around = new SidePicture.Surroundings(across, across, across, across.dividedBy(4));
        View life = View.of(new Scale("", Lesson.PAGE.width() / across.approxMm()), Spot.of(0, 0));
        Spot there = life.at(middle);
        Spot centre = Lesson.PAGE.centre();
        this.view = life.movedBy(centre.x() - there.x(), centre.y() - there.y());
    }

    static Window onHead(String title, Sample sample, Length across) {
        Stair stair = sample.stair();
        Point floor = Point.of(stair.headerFace(), stair.flight().totalRise());
        return new Window(title, sample, moved(floor, across, -16, -30), across);
    }

    static Window onFoot(String title, Sample sample, Length across) {
        return new Window(title, sample, moved(Point.of(Length.ZERO, Length.ZERO), across, 28, 23), across);
    }

    static Window onSteps(String title, Sample sample, Length across) {
        return new Window(title, sample, moved(sample.stair().nosing(2), across, 14, 4), across);
    }

    /** So many hundredths of the width that is seen to the right and up. */
    private static Point moved(Point point, Length across, int right, int up) {
        Length part = across.dividedBy(100);
        return point.shifted(part.times(right), part.times(up));
    }

    Stair stair() {
        return stair;
    }

    Canvas canvas() {
        return canvas;
    }

    Spot at(Point point) {
        return view.at(point);
    }

    List<Spot> at(List<Point> points) {
        return view.at(points);
    }

    Taping taping() {
        return new Taping(canvas);
    }

    /** Draws all that is seen of the stair and of what it stands between. */
    Window drawn() {
        part("ground", SidePicture::ground);
        part("header", SidePicture::header);
        part("floor", SidePicture::floor);
        part(PartId.STRINGER.mark(), SidePicture::stringer);
        part(PartId.RISER.mark(), SidePicture::risers);
        part(PartId.TREAD.mark(), SidePicture::treads);
        part(PartId.HEAD_BOARD.mark(), SidePicture::headBoard);
        part(PartId.FOOT_BOARD.mark(), SidePicture::footBoard);
        return this;
    }

    private void part(String name, Consumer<SidePicture> drawing) {
        Draft whole = new Draft("", "", new Box(0, 0, 1, 1));
        drawing.accept(new SidePicture(whole, view, stair, around));
        Pane pane = new Pane(Lesson.PAGE, canvas.draft(), Spot.of(0, 0));
        canvas.part(name, () -> whole.marks().forEach(mark -> copy(mark, pane)));
    }

    /** A grain of the ground is small enough to be there or not; a pane would cut it out of many strokes. */
    private void copy(Mark mark, Pane pane) {
        if (mark instanceof Mark.Disc disc) {
            if (Lesson.PAGE.inset(disc.radius()).contains(disc.centre())) {
                canvas.draft().add(disc);
            }
        } else {
            pane.copy(mark);
        }
    }
}
