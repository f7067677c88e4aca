package pitchboard.sheet.subject;

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
public final class SidePicture {
    public static final Length HEADER_THICKNESS = Length.inches(1, 1, 2);

    private final Draft draft;
    private final View view;
    private final Stair stair;
    private final Surroundings around;
    private final SideView side;

    public SidePicture(Draft draft, View view, Stair stair) {
        this(draft, view, stair, Surroundings.ON_PAPER);
    }

    public SidePicture(Draft draft, View view, Stair stair, Surroundings around) {
        this.draft = draft;
        this.view = view;
        this.stair = stair;
        this.around = around;
        this.side = new SideView(stair);
    }

    /**
     * How much is shown of what the stair stands between.
     *
     * @param floor of the upper floor, behind the header's face
     * @param before of the ground, in front of the first riser cut
     * @param behind of the ground, behind the heel
     * @param deep of the ground, downward
     */
    public record Surroundings(Length floor, Length before, Length behind, Length deep) {
        static final Surroundings ON_PAPER =
                new Surroundings(Length.inches(26), Length.inches(16), Length.inches(8), Length.inches(4));

        private Outline ground(Stair stair) {
            Length surface = stair.site().lowerFinish().negated();
            Length heel = new StringerShape(stair).heel().x();
            return SideView.rectangle(before.negated(), surface.minus(deep), heel.plus(behind), surface);
        }
    }

    public static PartRef ref(PartId id) {
        return PartRef.of(id.mark());
    }

    /** What the picture covers, for fitting a view; overheads not included. */
    public static List<Point> extent(Stair stair) {
        return extent(stair, Surroundings.ON_PAPER);
    }

    /** What the picture covers with so much around it; overheads not included. */
    public static List<Point> extent(Stair stair, Surroundings around) {
        SideView side = new SideView(stair);
        List<Point> points = new ArrayList<>(side.stringer().corners());
        points.addAll(side.decking(around.floor()).corners());
        points.addAll(side.header(HEADER_THICKNESS).corners());
        points.addAll(around.ground(stair).corners());
        points.add(stair.nosing(1));
        return points;
    }

    private Pencil pencil(PartId id) {
        return draft.pencil(ref(id));
    }

    public void draw() {
        ground();
        header();
        floor();
        support();
        stringer();
        risers();
        treads();
        headBoard();
        footBoard();
    }

    public void ground() {
        Pencil pencil = draft.pencil();
        Outline ground = around.ground(stair);
        List<Spot> corners = view.at(ground);
        new Hatch(pencil).inside(corners, material());
        pencil.line(Pen.CUT, corners.get(1), corners.get(2));
        if (stair.site().lowerFinish().isPositive()) {
            pencil.line(
                    Pen.GHOST,
                    view.at(ground.corners().get(1).x(), Length.ZERO),
                    view.at(ground.corners().get(2).x(), Length.ZERO));
        }
    }

    private Material material() {
        FootSurface foot = stair.site().foot();
        return switch (foot) {
            case CONCRETE_PAD -> Material.CONCRETE;
            case TIMBER_FLOOR -> Material.TIMBER_ALONG;
            case COMPACTED_GROUND -> Material.GROUND;
        };
    }

    public void header() {
        Pencil pencil = draft.pencil();
        List<Spot> header = view.at(side.header(HEADER_THICKNESS));
        new Hatch(pencil).inside(header, Material.TIMBER_ACROSS);
        pencil.outline(Pen.CUT, header);
    }

    public void floor() {
        draft.pencil().outline(Pen.OUTLINE, Fill.WHITE, view.at(side.decking(around.floor())));
    }

    /** The post under it, where there is one. */
    public void support() {
        side.supportPost().ifPresent(post -> {
            underPost(post);
            pencil(PartId.SUPPORT).outline(Pen.OUTLINE, Fill.WHITE, view.at(post));
        });
    }

    /** The ground goes on there. */
    private void underPost(Outline post) {
        Length surface = post.least(Point::y);
        Outline ground = SideView.rectangle(
                post.least(Point::x).minus(around.deep()),
                surface.minus(around.deep()),
                post.greatest(Point::x).plus(around.deep()),
                surface);
        Pencil pencil = draft.pencil();
        List<Spot> corners = view.at(ground);
        new Hatch(pencil).inside(corners, material());
        pencil.line(Pen.CUT, corners.get(1), corners.get(2));
    }

    public void stringer() {
        pencil(PartId.STRINGER).outline(Pen.OUTLINE, Fill.LIGHT, view.at(side.stringer()));
    }

    public void risers() {
        for (int step = 1; step <= stair.flight().risers(); step++) {
            side.riserBoard(step)
                    .ifPresent(riser -> pencil(PartId.RISER).outline(Pen.OUTLINE, Fill.WHITE, view.at(riser)));
        }
    }

    public void treads() {
        for (int step = 1; step <= stair.treads(); step++) {
            side.treadBoards(step)
                    .forEach(board -> pencil(PartId.TREAD).outline(Pen.OUTLINE, Fill.WHITE, view.at(board)));
        }
    }

    /** The hanger board or ledger, where there is one. */
    public void headBoard() {
        side.headBoard().ifPresent(board -> section(PartId.HEAD_BOARD, board));
    }

    /** The sole or kicker board, where there is one. */
    public void footBoard() {
        side.footBoard().ifPresent(board -> section(PartId.FOOT_BOARD, board));
    }

    private void section(PartId id, Outline board) {
        Pencil pencil = pencil(id);
        pencil.outline(Pen.OUTLINE, Fill.WHITE, view.at(board));
        new Hatch(pencil).inside(view.at(board), Material.TIMBER_ACROSS);
    }
}
