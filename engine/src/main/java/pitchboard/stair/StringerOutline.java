package pitchboard.stair;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;

/** Walks round a stringer: foot, steps, head, bottom edge. Clockwise, since x runs right and y up. */
final class StringerOutline {
    private final StringerShape shape;
    private final Stair stair;
    private final List<Point> corners = new ArrayList<>();

    private StringerOutline(StringerShape shape) {
        this.shape = shape;
        this.stair = shape.stair();
    }

    static Outline of(StringerShape shape) {
        StringerOutline walk = new StringerOutline(shape);
        walk.foot();
        walk.steps();
        walk.head();
        walk.add(shape.heel());
        return Outline.through(walk.corners);
    }

    private void add(Point corner) {
        corners.add(corner);
    }

    private void add(Length x, Length y) {
        add(Point.of(x, y));
    }

    private void foot() {
        Point toe = shape.toe();
        if (stair.brief().foot() instanceof FootDetail.Kicker kicker) {
            add(toe.shifted(kicker.depth(), Length.ZERO));
            add(toe.shifted(kicker.depth(), kicker.height()));
            add(toe.shifted(Length.ZERO, kicker.height()));
        } else {
            add(toe);
        }
    }

    private void steps() {
        for (int step = 1; step <= stair.treads(); step++) {
            Length level = stair.levelCut(step);
            add(stair.riserCut(step), level);
            if (step < stair.treads()) {
                add(stair.riserCut(step + 1), level);
            }
        }
    }

    private void head() {
        HeadFixing fixing = stair.brief().headFixing();
        if (fixing instanceof HeadFixing.HangerBoard board) {
            hangerBoard(board);
        } else if (fixing instanceof HeadFixing.Ledger ledger) {
            ledger(ledger);
        } else {
            add(shape.headTop());
            add(shape.headBottom());
        }
    }

    private void hangerBoard(HeadFixing.HangerBoard board) {
        Point top = shape.headTop();
        Length back = top.x().minus(board.thickness());
        add(back, top.y());
        if (shape.takesWholeCut(board)) {
            add(shape.headEnd());
            return;
        }
        Length under = top.y().minus(board.height());
        add(back, under);
        add(top.x(), under);
        add(shape.headBottom());
    }

    /** The ledger's underside is level with the lowest point of the plumb cut it takes away. */
    private void ledger(HeadFixing.Ledger ledger) {
        Point bottom = shape.headBottom();
        Length back = bottom.x().minus(ledger.thickness());
        Length sitsAt = bottom.y().plus(ledger.height());
        add(shape.headTop());
        add(bottom.x(), sitsAt);
        add(back, sitsAt);
        add(shape.headEnd());
    }
}
