package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Fill;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Hatch;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.site.FootSurface;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** Draws the stair from the side: seen by someone on the right hand of a person who climbs. */
final class SidePicture {
    private static final Length HEADER_THICKNESS = Length.inches(1, 1, 2);
    private static final Length FLOOR_SHOWN = Length.inches(26);
    private static final Length GROUND_BEFORE_TOE = Length.inches(16);
    private static final Length GROUND_BEHIND_HEEL = Length.inches(8);
    private static final Length GROUND_DEPTH = Length.inches(4);

    private final Draft draft;
    private final View view;
    private final Stair stair;
    private final SideView side;

    SidePicture(Draft draft, View view, Stair stair) {
        this.draft = draft;
        this.view = view;
        this.stair = stair;
        this.side = new SideView(stair);
    }

    static PartRef ref(PartId id) {
        return PartRef.of(id.mark());
    }

    /** What the picture covers, for fitting a view; overheads not included. */
    static List<Point> extent(Stair stair) {
        SideView side = new SideView(stair);
        List<Point> points = new ArrayList<>(side.stringer().corners());
        points.addAll(side.decking(FLOOR_SHOWN).corners());
        points.addAll(side.header(HEADER_THICKNESS).corners());
        points.addAll(ground(stair).corners());
        points.add(stair.nosing(1));
        return points;
    }

    private static Outline ground(Stair stair) {
        Length surface = stair.site().lowerFinish().negated();
        Length heel = new StringerShape(stair).heel().x();
        return SideView.rectangle(
                GROUND_BEFORE_TOE.negated(), surface.minus(GROUND_DEPTH), heel.plus(GROUND_BEHIND_HEEL), surface);
    }

    private Pencil pencil(PartId id) {
        return draft.pencil(ref(id));
    }

    void draw() {
        groundAndFloor();
        stringer();
        boards();
    }

    private void groundAndFloor() {
        Pencil pencil = draft.pencil();
        Outline ground = ground(stair);
        List<Spot> corners = view.at(ground);
        new Hatch(pencil).inside(corners, material());
        pencil.line(Pen.CUT, corners.get(1), corners.get(2));
        if (stair.site().lowerFinish().isPositive()) {
            pencil.line(
                    Pen.GHOST,
                    view.at(ground.corners().get(1).x(), Length.ZERO),
                    view.at(ground.corners().get(2).x(), Length.ZERO));
        }
        header(pencil);
    }

    private Material material() {
        FootSurface foot = stair.site().foot();
        return switch (foot) {
            case CONCRETE_PAD -> Material.CONCRETE;
            case TIMBER_FLOOR -> Material.TIMBER_ALONG;
            case COMPACTED_GROUND -> Material.GROUND;
        };
    }

    private void header(Pencil pencil) {
        List<Spot> header = view.at(side.header(HEADER_THICKNESS));
        new Hatch(pencil).inside(header, Material.TIMBER_ACROSS);
        pencil.outline(Pen.CUT, header);
        pencil.outline(Pen.OUTLINE, Fill.WHITE, view.at(side.decking(FLOOR_SHOWN)));
    }

    private void stringer() {
        pencil(PartId.STRINGER).outline(Pen.OUTLINE, Fill.LIGHT, view.at(side.stringer()));
    }

    private void boards() {
        for (int step = 1; step <= stair.flight().risers(); step++) {
            side.riserBoard(step)
                    .ifPresent(riser -> pencil(PartId.RISER).outline(Pen.OUTLINE, Fill.WHITE, view.at(riser)));
        }
        for (int step = 1; step <= stair.treads(); step++) {
            side.treadBoards(step)
                    .forEach(board -> pencil(PartId.TREAD).outline(Pen.OUTLINE, Fill.WHITE, view.at(board)));
        }
        side.headBoard().ifPresent(board -> section(PartId.HEAD_BOARD, board));
        side.footBoard().ifPresent(board -> section(PartId.FOOT_BOARD, board));
    }

    private void section(PartId id, Outline board) {
        Pencil pencil = pencil(id);
        pencil.outline(Pen.OUTLINE, Fill.WHITE, view.at(board));
        new Hatch(pencil).inside(view.at(board), Material.TIMBER_ACROSS);
    }
}
