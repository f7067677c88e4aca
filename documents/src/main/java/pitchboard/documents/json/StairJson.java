package pitchboard.documents.json;

import java.util.List;
import pitchboard.measure.Marked;
import pitchboard.parts.RunningMark;
import pitchboard.parts.StoryPole;
import pitchboard.parts.StringerLayout;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/** The chosen stair, and its stringer on the board. */
record StairJson(QuantityJson quantities) {
    Json stair(Stair stair) {
        return Json.object()
                .with("risers", Json.number(stair.flight().risers()))
                .with("treads", Json.number(stair.treads()))
                .with("totalRise", quantities.of(stair.flight().totalRise()))
                .with("rise", quantities.of(stair.rise()))
                .with("run", quantities.of(stair.run()))
                .with("totalRun", quantities.of(stair.flight().totalRun()))
                .with("pitch", quantities.of(stair.pitch()))
                .with("nosingProjection", quantities.of(stair.projection()))
                .with("seat", quantities.of(stair.seat()))
                .with("firstCut", quantities.of(stair.firstCut()))
                .with("spaceTaken", quantities.of(stair.spaceTaken()))
                .with("headroom", quantities.of(stair.headroom().map(headroom -> headroom.clear())))
                .with("pole", Json.list(StoryPole.of(stair).heights(), this::mark))
                .with("spreadAsMarked", quantities.of(StoryPole.of(stair).spread()));
    }

    Json stringer(Stair stair) {
        StringerLayout layout = StringerLayout.of(stair);
        return Json.object()
                .with("throat", quantities.of(layout.shape().throat()))
                .with("plumbCut", quantities.of(layout.shape().plumbCut()))
                .with("contactHeight", quantities.of(layout.shape().contactHeight()))
                .with("boardNeeded", quantities.of(layout.boardNeeded()))
                .with("stepAlongEdge", quantities.of(layout.stepAlongEdge()))
                .with("marks", Json.list(layout.marks(), this::cornerMark))
                .with("heel", mark(layout.heelMark()))
                .with("headEnd", mark(layout.headMark()))
                .with("outlineOnBoardMm", outline(layout.outline()))
                .with("outlineInPlaceMm", outline(layout.shape().outline()));
    }

    private Json cornerMark(RunningMark mark) {
        return Json.object().with("corner", Json.number(mark.step())).with("at", mark(mark.at()));
    }

    Json mark(Marked mark) {
        return Json.object()
                .with("line", quantities.of(mark.line()))
                .with("exact", quantities.of(mark.exact()))
                .with("offByMm", Json.number(mark.givenUp().approxMm()));
    }

    private static Json outline(Outline outline) {
        return Json.list(outline.corners(), StairJson::corner);
    }

    private static Json corner(Point point) {
        return Json.list(List.of(point.x(), point.y()), length -> Json.number(length.approxMm()));
    }
}
