package pitchboard.sheet.rails;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pitchboard.brief.Infill;
import pitchboard.measure.Length;
import pitchboard.parts.EdgeView;
import pitchboard.parts.PartId;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.railing.EdgeLayout;
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
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** The guard along the upper floor's edge: seen from the foot, with the running marks of its posts and of one bay. */
public final class EdgeSheet {
    private static final double WORDS = 66;
    private static final double PICTURE = 92;

    private final Subject subject;
    private final EdgeLayout edge;
    private final String sides;
    private final Draft draft;
    private final Pencil pencil;
    private final View view;

    private EdgeSheet(Subject subject, EdgeLayout edge, String sides, Draft draft) {
        this.subject = subject;
        this.edge = edge;
        this.sides = sides;
        this.draft = draft;
        this.pencil = draft.pencil();
        Box room = draft.room();
        Box clear = new Box(room.left() + WORDS + 16, room.top() + 4, room.width() - WORDS - 34, PICTURE - 26);
        this.view = View.fitting(clear, extent(), Scale.of(subject.tape()));
    }

    /** Empty when no such guard is laid out; edges of one length on both sides share their pages. */
    public static List<Draft> of(Subject subject, Frame frame) {
        Map<Length, List<EdgeLayout>> alike = new LinkedHashMap<>();
        EdgeLayout.find(subject.stair())
                .forEach(edge -> alike.computeIfAbsent(edge.length(), key -> new ArrayList<>())
                        .add(edge));
        List<Draft> pages = new ArrayList<>();
        for (List<EdgeLayout> edges : alike.values()) {
            String sides = edges.stream().map(edge -> edge.hand().words()).collect(Collectors.joining(" and "));
            pages(subject, edges.get(0), sides, frame, pages);
        }
        return pages;
    }

    private static void pages(Subject subject, EdgeLayout edge, String sides, Frame frame, List<Draft> pages) {
        EdgeMarks marks = new EdgeMarks(subject, edge);
        Draft first = draft(frame, pages, sides);
        EdgeSheet sheet = new EdgeSheet(subject, edge, sides, first);
        sheet.draw();
        EdgeMarks.Next next = marks.draw(first, first.room().withoutTop(PICTURE), EdgeMarks.Next.FIRST);
        pages.add(first.scaled(sheet.view.scale()));
        while (!marks.isDone(next)) {
            Draft more = draft(frame, pages, sides);
            next = marks.draw(more, more.room(), next);
            pages.add(more);
        }
    }

    private static Draft draft(Frame frame, List<Draft> pages, String sides) {
        return frame.draft("edge", pages.size() + 1, "Guard along the upper floor's edge, " + sides);
    }

    private List<Point> extent() {
        return List.of(Point.of(Length.ZERO, edge.postFoot()), Point.of(edge.length(), edge.height()));
    }

    private void draw() {
        floor();
        EdgeView pieces = new EdgeView(edge);
        outlines(PartId.EDGE_INFILL, Pen.THIN, pieces.infill());
        outlines(PartId.EDGE_BOTTOM_RAIL, Pen.THIN, pieces.bottomRails());
        outlines(PartId.EDGE_POST, Pen.OUTLINE, pieces.posts());
        outlines(PartId.EDGE_TOP_RAIL, Pen.THIN, pieces.topRails());
        dimensions();
        pencil.paragraph(draft.room().topLeft().shifted(0, 3), WORDS, words(), Lettering.NOTE);
    }

    private void outlines(PartId id, Pen pen, List<Outline> outlines) {
        outlines.forEach(outline -> draft.pencil(SidePicture.ref(id)).outline(pen, Fill.WHITE, view.at(outline)));
    }

    /** The finished floor, and the underside of the header where the posts reach so far. */
    private void floor() {
        Spot left = view.at(Length.ZERO, Length.ZERO);
        Spot right = view.at(edge.length(), Length.ZERO);
        pencil.line(Pen.OUTLINE, left.shifted(-7, 0), right.shifted(5, 0));
        if (!edge.postFoot().isZero()) {
            pencil.line(
                    Pen.HIDDEN,
                    view.at(Length.ZERO, edge.postFoot()).shifted(-4, 0),
                    view.at(edge.length(), edge.postFoot()).shifted(5, 0));
        }
        Spot treads = view.at(Length.ZERO, edge.height());
        pencil.line(
                Pen.CENTRE,
                treads.shifted(0, -4),
                view.at(Length.ZERO, edge.postFoot()).shifted(0, 4));
        pencil.text(treads.shifted(1.5, -2.5), "end of the treads", Lettering.NOTE, Align.LEFT);
    }

    private void dimensions() {
        Dimensions sizes = new Dimensions(pencil, subject::size);
        double left = view.around(extent()).left() - 8;
        double right = view.around(extent()).right() + 9;
        sizes.plumb(left, station(Length.ZERO), station(edge.height()));
        if (edge.railAboveFloor().isPositive()) {
            sizes.plumb(right, station(Length.ZERO), station(edge.railAboveFloor()));
        }
        double bottom = view.around(extent()).bottom() + 7;
        Length half = edge.build().posts().section().width().dividedBy(2);
        List<Station> middles = edge.fronts().stream()
                .map(front -> front.plus(half))
                .map(middle -> Station.of(middle, view.at(middle, Length.ZERO)))
                .toList();
        if (middles.size() > 1) {
            sizes.level(bottom, middles);
        }
        sizes.level(
                bottom + 8,
                Station.of(Length.ZERO, view.at(Length.ZERO, Length.ZERO)),
                Station.of(edge.length(), view.at(edge.length(), Length.ZERO)));
    }

    private Station station(Length height) {
        return Station.of(height, view.at(Length.ZERO, height));
    }

    private String words() {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add("**To the " + sides + " of someone climbing**, seen from the foot"
                + (sides.equals("right") ? "." : "; on the left, draw it the other way round."));
        paragraphs.add("**" + counted(edge.posts(), "post") + "**, " + bays() + ".");
        paragraphs.add("**Top** " + subject.size(edge.height()) + " plumb above the finished floor. **Widest opening** "
                + subject.near(edge.opening()) + ".");
        beside(paragraphs);
        paragraphs.add(
                "**LP** posts, **LT** top rail, **LB** bottom rail, **LI** infill: see the pieces sheet. All ends are"
                        + " square.");
        paragraphs.add(
                edge.postFoot().isZero()
                        ? "The posts stand on the floor: each needs a base made and tested for guards."
                        : "The posts reach down over the header. How they are held needs a published or engineered detail.");
        return String.join("\n\n", paragraphs);
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private String bays() {
        return edge.bays() == 0
                ? "too close for a bay"
                : counted(edge.bays(), "bay") + (edge.bays() == 1 ? ", " : " alike, ") + subject.near(edge.clear())
                        + " clear";
    }

    private void beside(List<String> paragraphs) {
        edge.gapToFlight()
                .ifPresent(gap -> paragraphs.add(
                        gap.isPositive()
                                ? "**To the last post of the flight** " + subject.near(gap) + " level."
                                : "**The first post is in the way of the flight's last post**: move that one toward the foot, or"
                                        + " let one post serve both."));
    }

    static boolean isBalusters(EdgeLayout edge) {
        return edge.infill() instanceof Infill.Balusters;
    }
}
