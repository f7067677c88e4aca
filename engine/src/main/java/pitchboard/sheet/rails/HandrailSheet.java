package pitchboard.sheet.rails;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Handrail;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.parts.RailView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.railing.Brackets;
import pitchboard.railing.HandrailRun;
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
import pitchboard.sheet.subject.RailPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** The handrail from the side over the stair, its section at true size, and the running marks of its brackets. */
public final class HandrailSheet {
    private static final double WORDS = 70;
    private static final double DIMENSIONS = 20;

    private final Subject subject;
    private final Stair stair;
    private final HandrailRun run;
    private final Draft draft;
    private final Pencil pencil;
    private final View view;

    private HandrailSheet(Subject subject, HandrailRun run, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.run = run;
        this.draft = frame.draft("handrail", "Handrail");
        this.pencil = draft.pencil();
        Box clear = draft.room()
                .withoutLeft(WORDS + DIMENSIONS)
                .withoutRight(DIMENSIONS)
                .withoutBottom(4)
                .withoutTop(DIMENSIONS);
        this.view = View.fitting(clear, extent(), Scale.of(subject.tape()));
    }

    /** Empty when no handrail is wanted, or its height or section is not settled. */
    public static List<Draft> of(Subject subject, Frame frame) {
        return HandrailRun.find(subject.stair())
                .filter(run -> subject.findPart(PartId.HANDRAIL).isPresent())
                .map(run -> {
                    HandrailSheet sheet = new HandrailSheet(subject, run, frame);
                    sheet.draw();
                    return List.of(sheet.draft.scaled(sheet.view.scale()));
                })
                .orElse(List.of());
    }

    private List<Point> extent() {
        List<Point> points = new ArrayList<>(SidePicture.extent(stair));
        points.addAll(RailPicture.handrailExtent(stair));
        return points;
    }

    private void draw() {
        new SidePicture(draft, view, stair).draw();
        pencil.line(Pen.CENTRE, view.at(stair.nosing(1)), view.at(stair.nosing(stair.treads())));
        Outline rail = RailView.handrail(stair).orElseThrow();
        draft.pencil(SidePicture.ref(PartId.HANDRAIL)).outline(Pen.OUTLINE, Fill.WHITE, view.at(rail));
        Brackets.find(stair).ifPresent(this::brackets);
        lengths();
        heights();
        double below = section(words());
        Brackets.find(stair).ifPresent(brackets -> marks(brackets, below));
    }

    private Dimensions dimensions() {
        return new Dimensions(pencil, subject::size);
    }

    /** Along the slope, and along the level piece where there is one. */
    private void lengths() {
        List<Point> line = run.line();
        double off = 8;
        dimensions()
                .sloping(
                        off,
                        Station.of(Length.ZERO, view.at(line.get(0))),
                        Station.of(run.onSlope(), view.at(line.get(1))));
        if (line.size() > 2) {
            double y = view.at(line.get(1)).y() - off;
            dimensions().level(y, view.level(line.get(1)), view.level(line.get(2)));
        }
    }

    /** Over the lowest and the highest nosing: all between are the same. */
    private void heights() {
        height(stair.nosing(1), view.around(extent()).left() - 9);
        if (stair.treads() > 1) {
            height(stair.nosing(stair.treads()), view.around(extent()).right() + 9);
        }
    }

    private void height(Point nosing, double x) {
        dimensions().plumb(x, view.plumb(nosing), view.plumb(nosing.shifted(Length.ZERO, run.height())));
    }

    private void brackets(Brackets brackets) {
        brackets.places().forEach(place -> {
            Spot on = onTop(place);
            pencil.line(Pen.OUTLINE, on.shifted(0, -2), on.shifted(0, 2));
        });
    }

    /** On the sloping piece, or on the level one. */
    private Spot onTop(Length place) {
        List<Spot> line = view.at(run.line());
        boolean level = place.isMoreThan(run.onSlope());
        Spot from = line.get(level ? 1 : 0);
        Length past = level ? place.minus(run.onSlope()) : place;
        return from.toward(from.directionTo(line.get(level ? 2 : 1)), view.onPaper(past));
    }

    /** Returns where they end. */
    private double words() {
        Handrail rail = stair.brief().handrail();
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add("**Top** " + subject.size(run.height()) + " plumb over every nosing, on " + side(rail.sides())
                + " of someone climbing.");
        paragraphs.add("**Length** " + subject.near(run.length()) + " along its top" + parts());
        paragraphs.add(cuts());
        rail.clearance().ifPresent(gap -> paragraphs.add("**Gap to the wall** " + subject.size(gap) + ", clear."));
        paragraphs.add(
                "Return both ends to the wall or a post, so that no sleeve or strap can catch. Every bracket goes"
                        + " into solid framing or blocking.");
        return pencil.paragraph(
                draft.room().topLeft().shifted(0, 3), WORDS, String.join("\n\n", paragraphs), Lettering.NOTE);
    }

    private static String side(Handrail.Sides sides) {
        return switch (sides) {
            case LEFT -> "the left";
            case RIGHT -> "the right";
            case BOTH -> "both sides";
            case NONE -> "no side";
        };
    }

    private String parts() {
        return isSloping()
                ? "."
                : ": " + subject.near(run.onSlope()) + " on the slope, "
                        + subject.size(run.past().head()) + " level.";
    }

    private boolean isSloping() {
        return run.past().head().isZero();
    }

    private String cuts() {
        double pitch = stair.pitch().degrees();
        String plumb = "**Cuts** plumb, " + Decimals.fixed(pitch, 1) + "° from square";
        return isSloping()
                ? plumb + "."
                : plumb + "; where it goes on level, both pieces at half of that, " + Decimals.fixed(pitch / 2, 1)
                        + "°.";
    }

    /** Returns where it ends. */
    private double section(double top) {
        GripPicture picture =
                new GripPicture(subject, stair.brief().handrail().grip().orElseThrow());
        return picture.draw(draft, new Box(draft.room().left(), top + 4, WORDS, picture.height()));
    }

    /** The middle of every bracket from the end at the foot, along the top. */
    private void marks(Brackets brackets, double top) {
        Table table = Table.of(
                        Column.checkBox("bracket", 20),
                        Column.right("from the foot's end", 32).bold(),
                        Column.right("off by", 18).small())
                .lettered(Lettering.ofCapitals(2.4));
        for (int i = 0; i < brackets.places().size(); i++) {
            Marked mark = Marked.of(brackets.places().get(i), subject.tape().graduation());
            table.row(
                    SidePicture.ref(PartId.HANDRAIL),
                    List.of(String.valueOf(i + 1), subject.running(mark.line()), MarkTable.offBy(subject, mark)));
        }
        Box room = draft.room();
        table.draw(draft, new Box(room.left(), top + 4, WORDS, room.bottom() - top - 4), 0);
    }
}
