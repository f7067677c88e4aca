package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.OverheadPicture;
import pitchboard.sheet.subject.RailPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.tiling.Clip;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TypeLine;
import pitchboard.sheet.type.Typesetter;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The stair from the side, with the sizes that place it. */
final class ElevationSheet {
    private static final double DIMENSIONS_LEFT = 16;
    private static final double DIMENSIONS_RIGHT = 24;
    private static final double DIMENSIONS_BELOW = 24;
    private static final double FIGURES_HEIGHT = 76;

    private final Subject subject;
    private final Stair stair;
    private final Draft draft;
    private final Pencil pencil;
    private final View view;

    private ElevationSheet(Subject subject, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.draft = frame.draft("elevation", "Elevation");
        this.pencil = draft.pencil();
        this.view = fitted();
    }

    static List<Draft> of(Subject subject, Frame frame) {
        ElevationSheet sheet = new ElevationSheet(subject, frame);
        sheet.draw();
        return List.of(sheet.draft.scaled(sheet.view.scale()));
    }

    /** The stair leaves the corner over its foot free for the figures, unless it is low and wide. */
    private View fitted() {
        Box clear = draft.room()
                .withoutLeft(DIMENSIONS_LEFT)
                .withoutRight(DIMENSIONS_RIGHT)
                .withoutBottom(DIMENSIONS_BELOW);
        View large = View.fitting(clear, extent(), Scale.of(subject.tape()));
        Box figures = draft.room().leftPart(KeyFigures.WIDTH + 3).topPart(FIGURES_HEIGHT);
        return reachesInto(figures, large)
                ? View.fitting(clear.withoutLeft(KeyFigures.WIDTH - 8), extent(), Scale.of(subject.tape()))
                : large;
    }

    private boolean reachesInto(Box figures, View tried) {
        List<Point> points = new ArrayList<>(SidePicture.extent(stair));
        railEnds().ifPresent(points::addAll);
        points.addAll(RailPicture.extent(stair));
        points.addAll(new OverheadPicture(subject, tried).farEdges());
        return points.stream().map(tried::at).anyMatch(figures::contains);
    }

    private List<Point> extent() {
        List<Point> points = new ArrayList<>(SidePicture.extent(stair));
        OverheadPicture.drawnUnderside(stair).ifPresent(points::add);
        railEnds().filter(ends -> isLow()).ifPresent(points::addAll);
        return points;
    }

    /** Beside a low flight its rail is the larger thing, and is drawn whole. */
    private boolean isLow() {
        return stair.flight().totalRise().isLessThan(Length.inches(60));
    }

    private void draw() {
        double bottom =
                new KeyFigures(subject).draw(pencil, draft.room().topLeft().shifted(0, 0));
        new VerdictSummary(subject).draw(pencil, Spot.of(draft.room().left(), bottom + 7));
        new OverheadPicture(subject, view).draw(draft);
        new SidePicture(draft, view, stair).draw();
        RailPicture.faint(draft, view, stair);
        nosingLine();
        handrail();
        heights();
        lengths();
        oneStep();
        new ElevationNotes(subject, view, pencil).draw();
    }

    private Dimensions dimensions() {
        return new Dimensions(pencil, subject::size);
    }

    /** The line through the nosings, and its pitch written along it. */
    private void nosingLine() {
        Point first = stair.nosing(1);
        Point last = stair.nosing(stair.treads());
        pencil.line(
                Pen.CENTRE,
                view.at(first.shifted(stair.run().negated(), stair.rise().negated())),
                view.at(last));
        double slope = stair.pitch().degrees();
        TypeLine label = Typesetter.line("pitch " + subject.words(stair.pitch()), Lettering.DIMENSION);
        Stream<Integer> steps = Stream.of(8, 9, 10, 7, 6, 5, 4, 3, 2).map(tenths -> stair.treads() * tenths / 10);
        draft.add(draft.firstFree(steps.map(step -> view.at(stair.nosing(Math.max(1, step))))
                .map(along -> label.at(pencil.of(), along.toward(slope + 90, 2.2), slope, Align.RIGHT))
                .toList()));
    }

    /** The rail over the nosings, where its height is settled. */
    private void handrail() {
        railEnds().ifPresent(ends -> {
            // A tall stair fills the sheet; its rail is then broken off at the edge.
            new Clip(draft.room()).line(view.at(ends)).forEach(this::rail);
        });
    }

    private void rail(List<Spot> stretch) {
        pencil.line(Pen.GHOST, stretch);
        double slope = stair.pitch().degrees();
        String words =
                "handrail " + subject.size(stair.brief().handrail().height().orElseThrow()) + " above the nosings";
        TypeLine label = Typesetter.line(words, Lettering.NOTE);
        double length = stretch.get(0).distanceTo(stretch.get(1));
        if (label.width() < length) {
            draft.add(draft.firstFree(Stream.of(
                            0.5, 0.3, 0.7, 0.4, 0.6, 0.8, 0.2, 0.85, 0.75, 0.65, 0.55, 0.45, 0.35, 0.25)
                    .map(share -> stretch.get(0).toward(slope, share * length).toward(slope + 90, 1.6))
                    .map(spot -> label.at(pencil.of(), spot, slope, Align.CENTRE))
                    .toList()));
        }
    }

    /** From over the lowest nosing to over the highest; empty when no rail is settled. */
    private Optional<List<Point>> railEnds() {
        Handrail rail = stair.brief().handrail();
        if (rail.sides() == Handrail.Sides.NONE || stair.treads() < 2) {
            return Optional.empty();
        }
        return rail.height()
                .map(height -> List.of(
                        stair.nosing(1).shifted(Length.ZERO, height),
                        stair.nosing(stair.treads()).shifted(Length.ZERO, height)));
    }

    private void heights() {
        double right = view.around(extent()).right();
        Point foot = Point.of(stair.headerFace(), Length.ZERO);
        Point floor = Point.of(stair.headerFace(), stair.flight().totalRise());
        Station ground = Station.of(foot.y(), Spot.of(right, view.at(foot).y()));
        Station top = Station.of(floor.y(), Spot.of(right, view.at(floor).y()));
        dimensions().plumb(right + 12, ground, top);
        pencil.line(Pen.THIN, view.at(foot), ground.at());
    }

    private void lengths() {
        Flight flight = stair.flight();
        double bottom = view.around(extent()).bottom();
        Point nosing = stair.nosing(1);
        Station front = Station.of(nosing.x(), Spot.of(view.at(nosing).x(), bottom));
        Station cut = Station.of(
                Length.ZERO, Spot.of(view.at(Length.ZERO, Length.ZERO).x(), bottom));
        Station face = Station.of(
                flight.totalRun(),
                Spot.of(view.at(flight.totalRun(), Length.ZERO).x(), bottom));
        pencil.line(
                Pen.THIN,
                view.at(
                        stair.headerFace(),
                        new StringerShape(stair).headBottom().y()),
                face.at());
        dimensions().level(bottom + 9, front, cut, face);
        dimensions().level(bottom + 18, front, face);
    }

    /** One rise and one run, on the step in the middle. */
    private void oneStep() {
        if (stair.treads() < 2) {
            return;
        }
        int step = stair.treads() / 2;
        Point lower = stair.nosing(step);
        Point upper = stair.nosing(step + 1);
        dimensions().plumb(view.at(lower).x() - 7, view.plumb(lower), view.plumb(upper));
        dimensions().level(view.at(upper).y() - 7, view.level(lower), view.level(upper));
    }
}
