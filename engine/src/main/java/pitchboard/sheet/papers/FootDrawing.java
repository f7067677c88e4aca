package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.FootDetail;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.View;

/** The foot: what it stands on, the first cut, toe and heel. */
final class FootDrawing extends EndDetail {
    private static final Length AROUND = Length.inches(0, 3, 4);
    private static final Length GROUND_SHOWN = Length.inches(0, 5, 8);

    FootDrawing(Subject subject) {
        super(subject);
    }

    private Length surface() {
        return stair.site().lowerFinish().negated();
    }

    @Override
    List<Point> extent() {
        Length front = Length.min(stair.nosing(1).x(), stair.riserThickness().negated());
        Length back = Length.max(shape.heel().x(), stair.run());
        return corners(
                front.minus(AROUND),
                surface().minus(GROUND_SHOWN),
                back.plus(AROUND),
                stair.rise().plus(AROUND));
    }

    @Override
    void surroundings(Sketch sketch) {
        List<Point> extent = extent();
        Outline ground = SideView.rectangle(
                extent.get(0).x(), extent.get(0).y(), extent.get(1).x(), surface());
        Material material = switch (stair.site().foot()) {
            case CONCRETE_PAD -> Material.CONCRETE;
            case TIMBER_FLOOR -> Material.TIMBER_ALONG;
            case COMPACTED_GROUND -> Material.GROUND;
        };
        sketch.hatched(sketch.draft().pencil(), Pen.THIN, material, ground);
        View view = sketch.view();
        sketch.draft()
                .pencil()
                .line(
                        Pen.CUT,
                        view.at(extent.get(0).x(), surface()),
                        view.at(extent.get(1).x(), surface()));
        if (stair.site().lowerFinish().isPositive()) {
            sketch.draft()
                    .pencil()
                    .line(
                            Pen.GHOST,
                            view.at(extent.get(0).x(), Length.ZERO),
                            view.at(extent.get(1).x(), Length.ZERO));
        }
        side.footBoard().ifPresent(board -> sketch.section(PartId.FOOT_BOARD, board));
    }

    @Override
    void dimensions(Dimensions dimensions, View view) {
        double left = view.around(extent()).left();
        double bottom = view.around(extent()).bottom();
        Point toe = shape.toe();
        Point firstCut = Point.of(Length.ZERO, stair.levelCut(1));
        Point tread = stair.nosing(1);
        dimensions.plumb(left - 3, view.plumb(toe), view.plumb(firstCut));
        if (!stair.seat().isZero()) {
            dimensions.plumb(left - 3, view.plumb(Point.of(Length.ZERO, Length.ZERO)), view.plumb(toe));
        }
        dimensions.plumb(left - 12, view.plumb(Point.of(Length.ZERO, Length.ZERO)), view.plumb(tread));
        dimensions.level(bottom + 5, view.level(toe), view.level(shape.heel()));
        dimensions.level(
                view.around(extent()).top() - 3,
                view.level(firstCut),
                view.level(Point.of(stair.run(), stair.levelCut(1))));
    }

    @Override
    List<Point> keyPoints() {
        List<Point> points =
                new ArrayList<>(List.of(shape.toe(), Point.of(Length.ZERO, stair.levelCut(1)), shape.heel()));
        if (stair.brief().foot() instanceof FootDetail.Kicker kicker) {
            points.add(shape.toe().shifted(kicker.depth(), kicker.height()));
        }
        return points;
    }
}
