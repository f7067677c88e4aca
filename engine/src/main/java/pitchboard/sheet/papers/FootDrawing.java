package pitchboard.sheet.papers;

import java.util.List;
import pitchboard.brief.FootDetail;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.Subject;

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
    List<Point> patternExtent() {
        return corners(
                AROUND.negated(),
                stair.seat().minus(Length.inches(0, 1, 4)),
                Length.max(shape.heel().x(), stair.run()).plus(AROUND),
                stair.levelCut(1).plus(Length.inches(0, 1, 4)));
    }

    @Override
    void dimensions(Dimensions dimensions, View view, Box around) {
        Point zero = Point.of(Length.ZERO, Length.ZERO);
        Point toe = shape.toe();
        Point firstCut = Point.of(Length.ZERO, stair.levelCut(1));
        dimensions.plumb(around.left() - 4, view.plumb(toe), view.plumb(firstCut));
        if (!stair.seat().isZero()) {
            dimensions.plumb(around.left() - 4, view.plumb(zero), view.plumb(toe));
        }
        dimensions.plumb(around.left() - 14, view.plumb(zero), view.plumb(stair.nosing(1)));
        dimensions.level(around.bottom() + 6, view.level(toe), view.level(shape.heel()));
        if (stair.treads() > 1) {
            dimensions.level(
                    around.top() - 4, view.level(firstCut), view.level(Point.of(stair.run(), stair.levelCut(1))));
        }
        kicker(dimensions, view);
    }

    private void kicker(Dimensions dimensions, View view) {
        if (stair.brief().foot() instanceof FootDetail.Kicker kicker) {
            Point inner = shape.toe().shifted(kicker.depth(), kicker.height());
            Point over = shape.toe().shifted(Length.ZERO, kicker.height());
            dimensions.level(view.at(over).y() - 6, view.level(over), view.level(inner));
            dimensions.plumb(
                    view.at(inner).x() + 7,
                    view.plumb(shape.toe().shifted(kicker.depth(), Length.ZERO)),
                    view.plumb(inner));
        }
    }

    @Override
    void patternDimensions(Dimensions dimensions, View view, Box around) {
        Point firstCut = Point.of(Length.ZERO, stair.levelCut(1));
        dimensions.plumb(around.left() - 4, view.plumb(shape.toe()), view.plumb(firstCut));
        dimensions.level(around.bottom() + 4, view.level(shape.toe()), view.level(shape.heel()));
        kicker(dimensions, view);
    }
}
