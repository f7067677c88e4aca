package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
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
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.tiling.Clip;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** One end of a stringer in place, cut off where it goes on; drawn small beside the board and again at true size. */
abstract class EndDetail {
    static final Length HEADER_THICKNESS = Length.inches(1, 1, 2);

    final Subject subject;
    final Stair stair;
    final StringerShape shape;
    final SideView side;

    EndDetail(Subject subject) {
        this.subject = subject;
        this.stair = subject.stair();
        this.side = subject.side();
        this.shape = new StringerShape(stair);
    }

    static EndDetail foot(Subject subject) {
        return new FootDrawing(subject);
    }

    static EndDetail head(Subject subject) {
        return new HeadDrawing(subject);
    }

    /** What is shown when the end is drawn with its surroundings: lower left and upper right corner. */
    abstract List<Point> extent();

    /** What is shown of the stringer alone, as a pattern. */
    abstract List<Point> patternExtent();

    abstract void surroundings(Sketch sketch);

    abstract void dimensions(Dimensions dimensions, View view, Box around);

    abstract void patternDimensions(Dimensions dimensions, View view, Box around);

    /** Draws the end with its surroundings; what reaches out of its extent is cut off. */
    void draw(Draft draft, View view) {
        Box around = view.around(extent());
        Sketch sketch = new Sketch(draft, view, new Clip(around));
        surroundings(sketch);
        sketch.area(PartId.STRINGER, Pen.CUT, Optional.of(Fill.LIGHT), side.stringer());
        boards(sketch);
        dimensions(hand(draft), view, around);
    }

    /** Draws the stringer alone, as a pattern. */
    void drawPattern(Draft draft, View view) {
        Box around = view.around(patternExtent());
        Sketch sketch = new Sketch(draft, view, new Clip(around));
        sketch.area(PartId.STRINGER, Pen.CUT, Optional.of(Fill.LIGHT), side.stringer());
        patternDimensions(hand(draft), view, around);
    }

    private Dimensions hand(Draft draft) {
        return new Dimensions(draft.pencil(SidePicture.ref(PartId.STRINGER)), subject::size);
    }

    private void boards(Sketch sketch) {
        for (int step = 1; step <= stair.flight().risers(); step++) {
            side.riserBoard(step).ifPresent(riser -> sketch.area(PartId.RISER, Pen.GHOST, Optional.empty(), riser));
        }
        for (int step = 1; step <= stair.treads(); step++) {
            side.treadBoards(step).forEach(board -> sketch.area(PartId.TREAD, Pen.GHOST, Optional.empty(), board));
        }
    }

    /** Draws into the window only. */
    record Sketch(Draft draft, View view, Clip window) {
        void area(PartId id, Pen pen, Optional<Fill> fill, Outline outline) {
            area(draft.pencil(SidePicture.ref(id)), pen, fill, outline);
        }

        void area(Pencil pencil, Pen pen, Optional<Fill> fill, Outline outline) {
            List<Spot> corners = view.at(outline);
            List<Spot> inside = window.area(corners);
            if (inside.size() > 2) {
                fill.ifPresent(tint -> pencil.fill(tint, inside));
                window.edges(corners).forEach(stretch -> pencil.line(pen, stretch));
            }
        }

        void hatched(Pencil pencil, Pen pen, Material material, Outline outline) {
            List<Spot> inside = window.area(view.at(outline));
            if (inside.size() > 2) {
                pencil.fill(Fill.WHITE, inside);
                new Hatch(pencil).inside(inside, material);
                window.edges(view.at(outline)).forEach(stretch -> pencil.line(pen, stretch));
            }
        }

        void section(PartId id, Outline outline) {
            hatched(draft.pencil(SidePicture.ref(id)), Pen.OUTLINE, Material.TIMBER_ACROSS, outline);
        }
    }

    static List<Point> corners(Length left, Length bottom, Length right, Length top) {
        return new ArrayList<>(List.of(Point.of(left, bottom), Point.of(right, top)));
    }
}
