package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.parts.StringerSpacing;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Notes;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.rails.EdgePlan;
import pitchboard.sheet.rails.PlanPicture;
import pitchboard.sheet.rails.PlanSurroundings;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;
import pitchboard.site.Hand;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** The stair from above. The climber's left is up the page: y counts from the right-hand end of the treads. */
final class PlanSheet {
    private final Subject subject;
    private final Stair stair;
    private final Length width;
    private final PlanSurroundings around;
    private final Draft draft;
    private final Pencil pencil;
    private final View view;

    private PlanSheet(Subject subject, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.width = stair.brief().width();
        this.around = new PlanSurroundings(stair);
        this.draft = frame.draft("plan", "Plan");
        this.pencil = draft.pencil();
        Box room = draft.room().withoutLeft(28).withoutRight(8).withoutTop(14).withoutBottom(44);
        this.view = View.fitting(room, extent(), Scale.of(subject.tape()));
    }

    static List<Draft> of(Subject subject, Frame frame) {
        PlanSheet sheet = new PlanSheet(subject, frame);
        sheet.draw();
        return List.of(sheet.draft.scaled(sheet.view.scale()));
    }

    private List<Point> extent() {
        return around.extent();
    }

    private void draw() {
        PlanPicture.draw(draft, view, stair);
        wayUp();
        across();
        along();
        notes();
    }

    private void wayUp() {
        Length middle = width.dividedBy(2);
        Length third = width.dividedBy(3);
        Spot tail = view.at(stair.nosing(1).x().minus(Length.inches(2)), third);
        Spot tip = view.at(stair.headerFace(), third);
        new Signs(pencil).arrow(tail, tip, "");
        pencil.text(wayUpLabel(), wayUpWords(), Lettering.HEAD, Align.RIGHT);
        pencil.text(view.at(stair.headerFace(), middle).shifted(4, 1), "upper floor", Lettering.NOTE, Align.LEFT);
    }

    private Spot wayUpLabel() {
        return view.at(stair.nosing(1).x().minus(Length.inches(1)), width.dividedBy(3))
                .shifted(-3, 1);
    }

    private String wayUpWords() {
        int risers = stair.flight().risers();
        return "UP " + risers + (risers == 1 ? " riser" : " risers");
    }

    private Dimensions dimensions() {
        return new Dimensions(pencil, subject::size);
    }

    /** The width, and where the middles of the stringers come. */
    private void across() {
        double label = wayUpLabel().x() - Typesetter.width(wayUpWords(), Lettering.HEAD) - 2;
        double left = Math.min(view.around(extent()).left(), label);
        Length x = stair.nosing(1).x();
        dimensions().plumb(left - 14, station(x, Length.ZERO), station(x, width));
        List<Station> middles = new ArrayList<>();
        middles.add(station(x, Length.ZERO));
        StringerSpacing.of(stair.brief()).middles().forEach(middle -> middles.add(station(x, middle)));
        middles.add(station(x, width));
        dimensions().plumb(left - 5, middles);
    }

    private Station station(Length x, Length y) {
        return Station.of(y, view.at(x, y));
    }

    private void along() {
        double y = view.around(extent()).bottom() + 5;
        Length first = stair.nosing(1).x();
        Length last = stair.nosing(stair.treads()).x();
        Length face = stair.headerFace();
        if (stair.treads() > 1) {
            new Dimensions(pencil, length -> runs(length, first, last)).level(y + 5, at(first), at(last));
            dimensions().level(y + 5, at(last), at(face));
        }
        dimensions().level(y + 15, at(first), at(face));
        pencil.text(
                Spot.of(draft.room().left(), y + 23),
                "Sizes along the flight are level, nosing to nosing; the last is from the top nosing to the face of the header.",
                Lettering.NOTE,
                Align.LEFT);
    }

    /** How the runs add up, where there is room to say so. */
    private String runs(Length length, Length first, Length last) {
        String sum = (stair.treads() - 1) + " runs of " + subject.size(stair.run()) + " = " + subject.size(length);
        double room = view.onPaper(last.minus(first)) - 4;
        return Typesetter.width(sum, Lettering.DIMENSION) < room ? sum : subject.size(length);
    }

    private Station at(Length x) {
        return Station.of(x, view.at(x, Length.ZERO));
    }

    private void notes() {
        Notes notes = new Notes(pencil, 60);
        boolean edge = EdgePlan.reach(stair, Hand.LEFT).isPositive();
        Spot top = view.at(stair.run().times(stair.treads()).dividedBy(edge ? 4 : 2), width);
        notes.onArea(
                top.shifted(0, view.onPaper(Length.inches(1))),
                List.of(top.shifted(9, -8), top.shifted(14, -11)),
                side("climber's left", stair.site().leftSide()));
        Spot bottom = view.at(stair.run().times(stair.treads()).dividedBy(2), Length.ZERO);
        double belowWall = view.onPaper(PlanSurroundings.WALL_SHOWN) + Lettering.NOTE.capHeight() + 1.2;
        pencil.text(
                bottom.shifted(0, Math.max(view.onPaper(PlanSurroundings.BESIDE) - 1, belowWall)),
                side("climber's right", stair.site().rightSide()),
                Lettering.NOTE,
                Align.CENTRE);
    }

    private static String side(String name, Side side) {
        return name + ": " + (side == Side.OPEN ? "open side" : "wall");
    }
}
