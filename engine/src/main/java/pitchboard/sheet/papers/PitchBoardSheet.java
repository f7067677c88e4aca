package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.AngleDimension;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** The pitch board at true size: one rise by one run, with the grain along the slope. */
final class PitchBoardSheet implements TrueSize.Drawing {
    private static final double MARGIN = 12;

    private final Subject subject;
    private final Stair stair;

    private PitchBoardSheet(Subject subject) {
        this.subject = subject;
        this.stair = subject.stair();
    }

    static List<Draft> of(Subject subject, Frame frame) {
        return new TrueSize(frame, "pitch-board", "Pitch board, true size").sheets(new PitchBoardSheet(subject));
    }

    /** The corner is at the top left; the run goes right, the rise down, so that the slope lies as on the board. */
    private List<Point> corners() {
        return List.of(
                Point.of(Length.ZERO, Length.ZERO),
                Point.of(stair.run(), Length.ZERO),
                Point.of(Length.ZERO, stair.rise().negated()));
    }

    @Override
    public Box room(View view) {
        return view.around(corners()).inset(-MARGIN);
    }

    @Override
    public List<Point> matchPoints() {
        return corners();
    }

    @Override
    public void draw(Draft draft, View view) {
        PartRef part = SidePicture.ref(PartId.PITCH_BOARD);
        Pencil pencil = draft.pencil(part);
        List<Spot> spots = view.at(corners());
        pencil.outline(Pen.CUT, spots);
        Dimensions dimensions = new Dimensions(pencil, subject::size);
        dimensions.level(
                spots.get(0).y() - 6,
                view.level(corners().get(0)),
                view.level(corners().get(1)));
        dimensions.plumb(
                spots.get(0).x() - 6,
                view.plumb(corners().get(2)),
                view.plumb(corners().get(0)));
        new AngleDimension(pencil)
                .at(spots.get(1), 180, stair.pitch().degrees(), 30, stair.pitch(), subject.words(stair.pitch()));
        Spot middle = spots.get(1).midTo(spots.get(2));
        double slope = stair.pitch().degrees();
        new Signs(pencil).grain(middle.toward(slope + 90, 22), slope, 60);
        pencil.text(
                middle.toward(slope + 90, 6),
                slope,
                "this side on the board's edge, grain along it",
                Lettering.NOTE,
                Align.CENTRE);
        words(pencil, spots.get(0));
    }

    private void words(Pencil pencil, Spot corner) {
        List<String> lines = new ArrayList<>(List.of(
                "rise  " + subject.size(stair.rise()),
                "run  " + subject.size(stair.run()),
                "up the stair from left to right"));
        double y = corner.y() + 12;
        for (String line : lines) {
            pencil.text(Spot.of(corner.x() + 8, y), line, Lettering.HEAD, Align.LEFT);
            y += 6;
        }
    }
}
