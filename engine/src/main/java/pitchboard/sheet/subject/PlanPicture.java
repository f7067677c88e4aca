package pitchboard.sheet.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.parts.StringerSpacing;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Hatch;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.drafting.View;
import pitchboard.site.Landing;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** Draws the stair from above. The climber's left is up the page: y counts from the right-hand end of the treads. */
public final class PlanPicture {
    /** Of a wall beside the flight. */
    public static final Length WALL_SHOWN = Length.inches(4);
    /** Of the floor, on either side of the flight. */
    public static final Length BESIDE = Length.inches(8);

    private static final Length FLOOR_SHOWN = Length.inches(26);
    private static final Length LANDING_SHOWN = Length.inches(60);

    private final Stair stair;
    private final Length width;
    private final Draft draft;
    private final Pencil pencil;
    private final View view;

    public PlanPicture(Draft draft, View view, Stair stair) {
        this.stair = stair;
        this.width = stair.brief().width();
        this.draft = draft;
        this.pencil = draft.pencil();
        this.view = view;
    }

    /** What the picture covers, for fitting a view. */
    public static List<Point> extent(Stair stair) {
        Length width = stair.brief().width();
        List<Point> points = new ArrayList<>(SideView.rectangle(
                        stair.nosing(1).x().minus(Length.inches(10)),
                        BESIDE.negated(),
                        stair.headerFace().plus(FLOOR_SHOWN),
                        width.plus(BESIDE))
                .corners());
        bottomLanding(stair).ifPresent(landing -> points.addAll(landing.corners()));
        return points;
    }

    /** Floor, walls and landing, then the treads and the stringers under them; no rails. */
    public void draw() {
        floorAndWalls();
        landings();
        treads();
        stringers();
    }

    private List<Spot> box(Length left, Length bottom, Length right, Length top) {
        return view.at(SideView.rectangle(left, bottom, right, top));
    }

    private void floorAndWalls() {
        Length face = stair.headerFace();
        Length edge = face.minus(stair.site().head().deckingOverhang().orElse(Length.ZERO));
        Length back = face.plus(FLOOR_SHOWN);
        pencil.fill(Fill.LIGHT, box(edge, BESIDE.negated(), back, width.plus(BESIDE)));
        pencil.line(Pen.OUTLINE, view.at(edge, BESIDE.negated()), view.at(edge, width.plus(BESIDE)));
        pencil.line(Pen.HIDDEN, view.at(face, BESIDE.negated()), view.at(face, width.plus(BESIDE)));
        new Signs(pencil).breakLine(view.at(back, BESIDE.negated()), view.at(back, width.plus(BESIDE)));
        wall(stair.site().leftSide(), width, width.plus(WALL_SHOWN));
        wall(stair.site().rightSide(), WALL_SHOWN.negated(), Length.ZERO);
    }

    private void wall(Side side, Length bottom, Length top) {
        if (side == Side.WALL) {
            List<Spot> wall = box(stair.nosing(1).x().minus(Length.inches(10)), bottom, stair.headerFace(), top);
            new Hatch(pencil).inside(wall, Material.TIMBER_ACROSS);
            pencil.outline(Pen.OUTLINE, wall);
        }
    }

    /** A landing much larger than the flight would only make the flight small, and is left out. */
    private static Optional<Outline> bottomLanding(Stair stair) {
        Length width = stair.brief().width();
        Landing landing = stair.site().bottom();
        Length front = stair.riserThickness().negated();
        return landing.depth()
                .filter(depth -> depth.isAtMost(LANDING_SHOWN))
                .flatMap(depth -> landing.width()
                        .filter(across -> across.isAtMost(width.plus(LANDING_SHOWN)))
                        .map(across -> SideView.rectangle(
                                front.minus(depth),
                                width.minus(across).dividedBy(2),
                                front,
                                width.plus(across).dividedBy(2))));
    }

    private void landings() {
        bottomLanding(stair).ifPresent(landing -> pencil.outline(Pen.GHOST, view.at(landing)));
    }

    private void stringers() {
        Length half = stair.brief().stringers().stock().thickness().dividedBy(2);
        for (Length middle : StringerSpacing.of(stair.brief()).middles()) {
            draft.pencil(SidePicture.ref(PartId.STRINGER))
                    .outline(Pen.HIDDEN, box(Length.ZERO, middle.minus(half), stair.headerFace(), middle.plus(half)));
        }
    }

    private void treads() {
        TreadMakeUp treads = stair.brief().treads();
        Pencil hand = draft.pencil(SidePicture.ref(PartId.TREAD));
        for (int step = 1; step <= stair.treads(); step++) {
            Length front = stair.nosing(step).x();
            hand.outline(Pen.OUTLINE, Fill.WHITE, box(front, Length.ZERO, front.plus(treads.width()), width));
            for (int board = 1; board < treads.boards(); board++) {
                Length gap = front.plus(treads.boardWidth().plus(treads.gap()).times(board));
                hand.line(Pen.THIN, view.at(gap, Length.ZERO), view.at(gap, width));
            }
        }
    }
}
