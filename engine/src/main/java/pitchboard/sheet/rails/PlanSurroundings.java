package pitchboard.sheet.rails;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.parts.SideView;
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
import pitchboard.site.Hand;
import pitchboard.site.Landing;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** What is around the stair on the plan: upper floor, walls, the landing below. */
public record PlanSurroundings(Stair stair) {
    /** Of a wall beside the flight. */
    public static final Length WALL_SHOWN = Length.inches(4);
    /** Of the floor on either side of the flight. */
    public static final Length BESIDE = Length.inches(8);

    private static final Length FLOOR_SHOWN = Length.inches(26);
    private static final Length LANDING_SHOWN = Length.inches(60);

    /** What is shown, for fitting a view. */
    public List<Point> extent() {
        List<Point> points = new ArrayList<>(
                SideView.rectangle(front(), lowest(), stair.headerFace().plus(FLOOR_SHOWN), highest())
                        .corners());
        bottomLanding().ifPresent(landing -> points.addAll(landing.corners()));
        return points;
    }

    private Length front() {
        return stair.nosing(1).x().minus(Length.inches(10));
    }

    private Length width() {
        return stair.brief().width();
    }

    private Length lowest() {
        return BESIDE.plus(EdgePlan.reach(stair, Hand.RIGHT)).negated();
    }

    private Length highest() {
        return width().plus(BESIDE).plus(EdgePlan.reach(stair, Hand.LEFT));
    }

    public void draw(Draft draft, View view) {
        Pencil pencil = draft.pencil();
        Length face = stair.headerFace();
        Length edge = face.minus(stair.site().head().deckingOverhang().orElse(Length.ZERO));
        Length back = face.plus(FLOOR_SHOWN);
        pencil.fill(Fill.LIGHT, view.at(SideView.rectangle(edge, lowest(), back, highest())));
        pencil.line(Pen.OUTLINE, view.at(edge, lowest()), view.at(edge, highest()));
        pencil.line(Pen.HIDDEN, view.at(face, lowest()), view.at(face, highest()));
        new Signs(pencil).breakLine(view.at(back, lowest()), view.at(back, highest()));
        wall(pencil, view, stair.site().leftSide(), width(), width().plus(WALL_SHOWN));
        wall(pencil, view, stair.site().rightSide(), WALL_SHOWN.negated(), Length.ZERO);
        bottomLanding().ifPresent(landing -> pencil.outline(Pen.GHOST, view.at(landing)));
    }

    private void wall(Pencil pencil, View view, Side side, Length bottom, Length top) {
        if (side == Side.WALL) {
            List<Spot> wall = view.at(SideView.rectangle(front(), bottom, stair.headerFace(), top));
            new Hatch(pencil).inside(wall, Material.TIMBER_ACROSS);
            pencil.outline(Pen.OUTLINE, wall);
        }
    }

    /** A landing much larger than the flight would only make the flight small, and is left out. */
    private Optional<Outline> bottomLanding() {
        Landing landing = stair.site().bottom();
        Length front = stair.riserThickness().negated();
        return landing.depth()
                .filter(depth -> depth.isAtMost(LANDING_SHOWN))
                .flatMap(depth -> landing.width()
                        .filter(across -> across.isAtMost(width().plus(LANDING_SHOWN)))
                        .map(across -> SideView.rectangle(
                                front.minus(depth),
                                width().minus(across).dividedBy(2),
                                front,
                                width().plus(across).dividedBy(2))));
    }
}
