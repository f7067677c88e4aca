package pitchboard.sheet.papers;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.Subject;

/** The head: the header, what is let into the stringer there, and the plumb cut. */
final class HeadDrawing extends EndDetail {
    private static final Length AROUND = Length.inches(0, 3, 4);
    private static final Length FLOOR_SHOWN = Length.inches(3);

    HeadDrawing(Subject subject) {
        super(subject);
    }

    private Length front() {
        Length board =
                stair.brief().headFixing() instanceof HeadFixing.HangerBoard hanger ? hanger.thickness() : Length.ZERO;
        return stair.headerFace().minus(Length.max(stair.run().dividedBy(2), board.plus(Length.inches(3))));
    }

    @Override
    List<Point> extent() {
        Length lowest = Length.min(
                shape.headBottom().y(),
                side.headBoard()
                        .map(board -> board.least(Point::y))
                        .orElse(shape.headBottom().y()));
        return corners(
                front(),
                lowest.minus(AROUND),
                stair.headerFace().plus(FLOOR_SHOWN),
                stair.flight().totalRise().plus(AROUND));
    }

    @Override
    void surroundings(Sketch sketch) {
        Outline header = side.header(HEADER_THICKNESS);
        sketch.hatched(sketch.draft().pencil(), Pen.CUT, Material.TIMBER_ACROSS, header);
        sketch.area(sketch.draft().pencil(), Pen.OUTLINE, Optional.of(Fill.WHITE), side.decking(FLOOR_SHOWN.times(2)));
    }

    @Override
    List<Point> patternExtent() {
        return corners(
                front(),
                shape.headBottom().y().minus(Length.inches(0, 1, 4)),
                stair.headerFace().plus(Length.inches(0, 1, 4)),
                shape.headTop().y().plus(Length.inches(0, 1, 4)));
    }

    @Override
    void dimensions(Dimensions dimensions, View view, Box around) {
        Point floor = Point.of(stair.headerFace(), stair.flight().totalRise());
        dimensions.plumb(
                around.right() + 5, view.plumb(shape.headBottom()), view.plumb(shape.headTop()), view.plumb(floor));
        headBoard(dimensions, view, around);
    }

    @Override
    void patternDimensions(Dimensions dimensions, View view, Box around) {
        dimensions.plumb(around.right() + 5, view.plumb(shape.headBottom()), view.plumb(shape.headTop()));
        headBoard(dimensions, view, around);
    }

    private void headBoard(Dimensions dimensions, View view, Box around) {
        side.headBoard().ifPresent(board -> {
            Point low = Point.of(board.least(Point::x), board.least(Point::y));
            Point high = Point.of(board.greatest(Point::x), board.greatest(Point::y));
            dimensions.plumb(around.left() - 5, view.plumb(low), view.plumb(Point.of(low.x(), high.y())));
            dimensions.level(around.bottom() + 6, view.level(low), view.level(Point.of(high.x(), low.y())));
        });
    }
}
