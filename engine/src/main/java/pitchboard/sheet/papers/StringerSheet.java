package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.RunningMark;
import pitchboard.parts.SideView;
import pitchboard.parts.StoryPole;
import pitchboard.parts.StringerLayout;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.MarkTable;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** A stringer on its board: every cut, and the running marks from the one datum. */
final class StringerSheet {
    private static final double MARKS_ABOVE = 26;
    private static final double BELOW = 17;

    private final Subject subject;
    private final Stair stair;
    private final StringerLayout layout;
    private final Draft draft;
    private final Pencil pencil;
    private final Pencil wood;
    private final View view;

    private StringerSheet(Subject subject, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.layout = subject.layout();
        this.draft = frame.draft("stringer", "Stringer");
        this.pencil = draft.pencil();
        this.wood = draft.pencil(SidePicture.ref(PartId.STRINGER));
        Box room = draft.room().inset(3, 0);
        View fit = View.fitting(room.withoutBottom(100), board().corners(), Scale.of(subject.tape()));
        this.view = toTop(fit, room);
    }

    static List<Draft> of(Subject subject, Frame frame) {
        StringerSheet sheet = new StringerSheet(subject, frame);
        sheet.draw();
        return List.of(sheet.draft.scaled(sheet.view.scale()));
    }

    private View toTop(View fit, Box room) {
        double top = fit.around(board().corners()).top();
        return fit.movedBy(0, room.top() + MARKS_ABOVE - top);
    }

    /** The board as bought, in the layout's frame: trimming hangs over at both ends. */
    private Outline board() {
        Length trim = stair.brief().stringers().trim();
        return SideView.rectangle(
                trim.negated(),
                layout.shape().boardDepth().negated(),
                layout.extent().plus(trim),
                Length.ZERO);
    }

    private void draw() {
        wood.outline(Pen.THIN, view.at(board()));
        wood.outline(Pen.CUT, Fill.LIGHT, view.at(layout.outline()));
        datum();
        topMarks();
        bottomMarks();
        double below = view.around(board().corners()).bottom() + BELOW;
        Box room = draft.room();
        Box lower = new Box(room.left(), below, room.width(), room.bottom() - below);
        MarkTable tables = new MarkTable(subject);
        tables.marks(draft, lower.leftPart(88));
        tables.pole(draft, lower.withoutLeft(96));
        howTo(Spot.of(lower.left() + 180, lower.top() + 3), lower.width() - 180);
    }

    private void howTo(Spot top, double width) {
        String grain = subject.tape().isInches() ? "thousandths of an inch" : "tenths of a millimetre";
        pencil.paragraph(
                top,
                width,
                "**How to mark it**\n• Crown up. Square the datum across the board, " + subject.size(trim())
                        + " or more from its end.\n• Hook the tape on the datum and mark every corner from it. Never step off one"
                        + " from another: what a tape line is off by, here in " + grain + ", would add up."
                        + "\n• Lay the pitch board on each pair of marks, and draw rise and run."
                        + "\n• Draw foot and head from their patterns."
                        + "\n• As marked, rises differ by "
                        + subject.size(StoryPole.of(stair).spread())
                        + " at most.\n\n**Board needed** " + subject.size(layout.boardNeeded()) + ", "
                        + stair.brief().stringers().stock().name() + "\n**Step along the edge** ≈ "
                        + subject.running(layout.stepAlongEdge()) + "\n**Throat left** "
                        + subject.size(layout.shape().throat()) + ", square to the edge"
                        + "\n**Plumb cut** " + degrees(90 - stair.pitch().degrees()) + " to the edge, **level cut** "
                        + degrees(stair.pitch().degrees()),
                Lettering.NOTE);
    }

    private static String degrees(double degrees) {
        return Decimals.fixed(degrees, 1) + "°";
    }

    private Length trim() {
        return stair.brief().stringers().trim();
    }

    /** The line all marks are measured from, squared across the board. */
    private void datum() {
        Spot top = view.at(Length.ZERO, Length.ZERO);
        Spot bottom = view.at(Length.ZERO, layout.shape().boardDepth().negated());
        pencil.line(Pen.CENTRE, top.shifted(0, -6), bottom.shifted(0, 5));
        pencil.text(bottom.shifted(1.2, 4.8), "datum", Lettering.HEAD, Align.LEFT);
    }

    private void topMarks() {
        List<Double> taken = new ArrayList<>();
        for (RunningMark mark : layout.marks()) {
            Spot on = view.at(mark.at().exact(), Length.ZERO);
            pencil.line(Pen.PENCIL, on, on.shifted(0, -3.2));
            double x = nudged(on.x(), taken);
            taken.add(x);
            pencil.text(
                    Spot.of(x + Lettering.DIMENSION.capHeight() / 2, on.y() - 4.4),
                    90,
                    subject.running(mark.at().line()),
                    Lettering.DIMENSION,
                    Align.LEFT);
        }
    }

    /** Keeps neighbouring labels apart when the steps are short on paper. */
    private static double nudged(double x, List<Double> taken) {
        double last = taken.isEmpty() ? x - 100 : taken.get(taken.size() - 1);
        return Math.max(x, last + Lettering.DIMENSION.lineHeight() * 0.86);
    }

    private void bottomMarks() {
        Length depth = layout.shape().boardDepth().negated();
        Dimensions dimensions = new Dimensions(pencil, subject::running);
        Spot zero = view.at(Length.ZERO, depth);
        Length heel = layout.heelMark().exact();
        dimensions.level(zero.y() + 12, Station.of(Length.ZERO, zero), Station.of(heel, view.at(heel, depth)));
        Length head = layout.headMark().exact();
        Spot headSpot = view.at(Point.of(head, depth));
        pencil.line(Pen.PENCIL, headSpot, headSpot.shifted(0, 3.2));
        pencil.text(
                headSpot.shifted(0, 7), subject.running(layout.headMark().line()), Lettering.DIMENSION, Align.CENTRE);
    }
}
