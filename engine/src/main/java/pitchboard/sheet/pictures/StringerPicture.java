package pitchboard.sheet.pictures;

import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.RunningMark;
import pitchboard.parts.SideView;
import pitchboard.parts.StringerLayout;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.papers.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** A stringer lying on its board with the datum at the left; every running mark is a group of its own. */
final class StringerPicture {
    private static final Lettering LETTERING = Lettering.ofCapitals(3.2);
    /** From mark to mark on the picture, so that their labels stand clear of each other. */
    private static final double STEP = 13;

    private static final double LEFT = 5;
    private static final double RIGHT = 9;
    private static final double ABOVE = 32;
    private static final double BELOW = 18;
    private static final double STROKE = 3.4;

    private final Subject subject;
    private final StringerLayout layout;
    private final View view;
    private final Canvas canvas;

    private StringerPicture(Subject subject) {
        this.subject = subject;
        this.layout = StringerLayout.of(subject.stair());
        double factor = STEP / layout.stepAlongEdge().approxMm();
        View life = View.of(new Scale("", factor), Spot.of(0, 0));
        Box board = life.around(board().corners());
        this.view = life.movedBy(LEFT - board.left(), ABOVE - board.top());
        this.canvas = new Canvas(
                Pictures.STRINGER,
                "The stringer on its board",
                new Box(0, 0, LEFT + board.width() + RIGHT, ABOVE + board.height() + BELOW));
    }

    static Picture of(Subject subject) {
        StringerPicture picture = new StringerPicture(subject);
        picture.draw();
        return picture.canvas.picture();
    }

    private Outline board() {
        Length trim = subject.stair().brief().stringers().trim();
        return SideView.rectangle(trim.negated(), depth().negated(), layout.extent().plus(trim), Length.ZERO);
    }

    private Length depth() {
        return layout.shape().boardDepth();
    }

    private void draw() {
        canvas.part(PartId.STRINGER.mark(), () -> {
            pencil().outline(Pen.THIN, view.at(board()));
            pencil().outline(Pen.CUT, Fill.LIGHT, view.at(layout.outline()));
        });
        canvas.plain(this::datum);
        layout.marks().forEach(this::corner);
        canvas.group(Picture.Kind.MARK, "heel", () -> below(layout.heelMark().exact(), subject.running(layout.heelMark().line())));
        canvas.group(Picture.Kind.MARK, "head", () -> below(layout.headMark().exact(), subject.running(layout.headMark().line())));
    }

    private Pencil pencil() {
        return canvas.pencil();
    }

    private void datum() {
        Spot top = view.at(Length.ZERO, Length.ZERO);
        Spot bottom = view.at(Length.ZERO, depth().negated());
        pencil().line(Pen.CENTRE, top.shifted(0, -6), bottom.shifted(0, 5));
        pencil().text(bottom.shifted(0, 14.5), "datum", LETTERING, Align.LEFT);
    }

    private void corner(RunningMark mark) {
        canvas.group(Picture.Kind.MARK, Integer.toString(mark.step()), () -> {
            Spot on = view.at(mark.at().exact(), Length.ZERO);
            pencil().line(Pen.PENCIL, on, on.shifted(0, -STROKE));
            pencil().text(
                            Spot.of(on.x() + LETTERING.capHeight() / 2, on.y() - STROKE - 1.2),
                            90,
                            subject.running(mark.at().line()),
                            LETTERING,
                            Align.LEFT);
        });
    }

    private void below(Length at, String words) {
        Spot on = view.at(Point.of(at, depth().negated()));
        pencil().line(Pen.PENCIL, on, on.shifted(0, STROKE));
        pencil().text(on.shifted(0, STROKE + 4.8), words, LETTERING, Align.CENTRE);
    }
}
