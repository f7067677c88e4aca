package pitchboard.sheet.papers;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.tiling.Tiles;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** The pitch board at true size: one rise by one run. Its slope lies level, as it will on the stringer's edge. */
final class PitchBoardSheet {
    private final Subject subject;
    private final Stair stair;
    private final Pencil pencil;
    private final View view;

    private PitchBoardSheet(Subject subject, Draft canvas) {
        this.subject = subject;
        this.stair = subject.stair();
        this.pencil = canvas.pencil(SidePicture.ref(PartId.PITCH_BOARD));
        this.view = new View(Scale.TRUE_SIZE, Spot.of(0, 0), -stair.pitch().degrees());
    }

    static List<Draft> of(Subject subject, Frame frame) {
        Draft canvas = Tiles.canvas("pitch-board", "Pitch board, true size").scaled(Scale.TRUE_SIZE);
        new PitchBoardSheet(subject, canvas).draw();
        return Tiles.over(frame, canvas);
    }

    private void draw() {
        Point corner = Point.of(Length.ZERO, Length.ZERO);
        Point runEnd = Point.of(stair.run(), Length.ZERO);
        Point riseEnd = Point.of(Length.ZERO, stair.rise().negated());
        pencil.outline(Pen.CUT, view.at(List.of(corner, runEnd, riseEnd)));
        along(view.at(corner), view.at(runEnd), "run " + subject.size(stair.run()));
        along(view.at(riseEnd), view.at(corner), "rise " + subject.size(stair.rise()));
        Spot left = view.at(riseEnd);
        Spot right = view.at(runEnd);
        Spot middle = left.midTo(right);
        pencil.text(
                middle.shifted(0, -4),
                "lay this side on the stringer's edge, against the marks",
                Lettering.NOTE,
                Align.CENTRE);
        new Signs(pencil).grain(middle.shifted(0, -14), 0, 60);
        pencil.text(middle.shifted(0, -18), "grain this way", Lettering.SMALL, Align.CENTRE);
        words(Spot.of(view.at(corner).x(), middle.y() - 44));
    }

    /** Names one leg, inside the board. */
    private void along(Spot from, Spot to, String words) {
        double way = from.directionTo(to);
        Spot middle = from.midTo(to).toward(way - 90, 3 + Lettering.NAME.capHeight());
        pencil.text(middle, way, words, Lettering.NAME, Align.CENTRE);
    }

    private void words(Spot top) {
        pencil.text(
                top.shifted(0, 7),
                "pitch " + subject.words(stair.pitch()) + ", this side up",
                Lettering.NOTE,
                Align.CENTRE);
    }
}
