package pitchboard.sheet.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.railing.GuardLayout;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.OverheadPicture;
import pitchboard.sheet.subject.RailPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/**
 * Where a stair falls on a page as wide as a phone's screen: as large as it can, with so much around it that its sizes
 * have room.
 *
 * @param body the box round all that is drawn of the stair and its surroundings
 */
record StairView(Stair stair, View view, SidePicture.Surroundings around, Box body, Box page) {
    /** Shown this wide on a phone of 390 CSS px, capitals of 3.2 mm are as large as the page's own words. */
    static final double WIDTH = 100;

    private static final double LEFT = 9;
    /** The rise of a step stands left of it, where a long flight has come down far enough to leave it room. */
    private static final double LEFT_OF_FEW = 23;

    private static final double RIGHT = 19;
    private static final double TALLEST = 118;
    private static final double ABOVE = 7.5;
    /** A low flight would otherwise fill the screen with one step. */
    private static final double LARGEST = 0.1;

    private static final double FLOOR = 16.5;
    private static final double GROUND_BEFORE = 6.5;
    private static final double GROUND_BEHIND = 6;
    private static final double GROUND_DEEP = 4;

    static StairView of(Stair stair) {
        List<Point> main = main(stair);
        Box life = View.of(Scale.TRUE_SIZE, Spot.of(0, 0)).around(main);
        double left = stair.treads() < 4 ? LEFT_OF_FEW : LEFT;
        double room = WIDTH - left - RIGHT;
        double factor = Math.min(LARGEST, Math.min(room / life.width(), TALLEST / life.height()));
        SidePicture.Surroundings around = new SidePicture.Surroundings(
                life(FLOOR, factor),
                life(GROUND_BEFORE, factor),
                life(GROUND_BEHIND, factor),
                life(GROUND_DEEP, factor));
        List<Point> all = new ArrayList<>(main);
        all.addAll(SidePicture.extent(stair, around));
        View view = View.of(new Scale("", factor), Spot.of(0, 0));
        Box drawn = view.around(all);
        double spare = room - view.around(main).width();
        View placed = view.movedBy(left + spare / 2 - view.around(main).left(), ABOVE - drawn.top());
        double strings = StairSizes.below(stair);
        Box page = new Box(0, 0, WIDTH, ABOVE + drawn.height() + strings);
        return new StairView(stair, placed, around, placed.around(all), page);
    }

    private static Length life(double onPaper, double factor) {
        return Length.mm((long) Math.ceil(onPaper / factor));
    }

    /** What has to be seen whole. */
    private static List<Point> main(Stair stair) {
        StringerShape shape = new StringerShape(stair);
        Length face = stair.headerFace();
        List<Point> points = new ArrayList<>(shape.outline().corners());
        points.add(Point.of(
                face.minus(stair.spaceTaken()), stair.site().lowerFinish().negated()));
        points.add(Point.of(face, stair.flight().totalRise()));
        points.add(Point.of(face, shape.headerBottom()));
        points.add(stair.nosing(1));
        OverheadPicture.drawnUnderside(stair).ifPresent(points::add);
        lines(stair).forEach(points::addAll);
        GuardLayout.find(stair).map(RailPicture::extent).ifPresent(points::addAll);
        return points;
    }

    private static Stream<List<Point>> lines(Stair stair) {
        return Stream.of(railLine(stair), guardLine(stair)).flatMap(Optional::stream);
    }

    /** The rail from over the lowest nosing to over the highest; empty when none is settled. */
    Optional<List<Point>> railLine() {
        return railLine(stair);
    }

    /** The guard's top likewise; empty, too, when the rail is its top. */
    Optional<List<Point>> guardLine() {
        return guardLine(stair);
    }

    private static Optional<List<Point>> railLine(Stair stair) {
        Handrail rail = stair.brief().handrail();
        return rail.height()
                .filter(height -> rail.sides() != Handrail.Sides.NONE)
                .map(height -> overNosings(stair, height));
    }

    private static Optional<List<Point>> guardLine(Stair stair) {
        Guard guard = stair.brief().guard();
        boolean same = railLine(stair).isPresent()
                && guard.height().equals(stair.brief().handrail().height());
        return guard.height().filter(height -> guard.wanted() && !same).map(height -> overNosings(stair, height));
    }

    private static List<Point> overNosings(Stair stair, Length height) {
        return List.of(
                stair.nosing(1).shifted(Length.ZERO, height),
                stair.nosing(stair.treads()).shifted(Length.ZERO, height));
    }
}
